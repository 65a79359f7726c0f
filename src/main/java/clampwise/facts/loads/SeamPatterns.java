package clampwise.facts.loads;

import clampwise.calc.statics.LimitState;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.LineWord;
import clampwise.facts.layout.ModuleEdge;
import clampwise.facts.loads.Shares.Share;
import clampwise.job.Panel;
import clampwise.job.Quantity.Length;
import clampwise.units.QuantityPrint;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * How many seams apart attachments may stand: each module edge is a beam on clamps at every so many
 * seams, and every one of them has to carry its part of both modules, wherever the first stands.
 *
 * @param <S> the limit state of loads and strengths
 */
final class SeamPatterns<S extends LimitState> {

  private static final int LEAST_CLAMPS = 2;
  private static final double ROUNDING_M = 1e-4;
  private static final double FULL = 1 + 1e-9;

  private final FieldLoads loads;
  private final Shares shares;
  private final Demands demands;
  private final Strengths<S> strengths;
  private final double pitchM;

  /** The edges that one attachment holds, and a seam on them. */
  private record Held(double seamM, List<ModuleEdge> edges) {}

  /** An edge with what decides about its clamps; edges alike need to be asked once. */
  private record Alike(long firstSeam, double alongM, double upM, ModuleLoad load) {}

  private SeamPatterns(LoadedField field, Strengths<S> strengths, double pitchM) {
    this.loads = field.loads();
    this.shares = field.shares();
    this.demands = new Demands(loads, shares);
    this.strengths = strengths;
    this.pitchM = pitchM;
  }

  /** The widest pattern that the edges held by some attachments admit, in words. */
  static <S extends LimitState> Optional<String> of(
      LoadedField field, Collection<Attachment> attachments, Strengths<S> strengths) {
    return field
        .site()
        .plane()
        .panel()
        .flatMap(Panel::pitch)
        .map(pitch -> text(every(field, attachments, strengths, pitch), pitch, line(field)));
  }

  private static <S extends LimitState> int every(
      LoadedField field, Collection<Attachment> attachments, Strengths<S> strengths, Length pitch) {
    SeamPatterns<S> patterns = new SeamPatterns<>(field, strengths, pitch.m());
    List<Held> held = patterns.distinct(attachments);
    int seams = 0;
    while (!held.isEmpty() && patterns.holds(held, seams + 1)) {
      seams++;
    }
    return seams;
  }

  private static String line(LoadedField field) {
    return LineWord.of(field.site().plane().panel()).one();
  }

  private static String text(int seams, Length pitch, String line) {
    return switch (seams) {
      case 0 -> "use a stronger clamp or a second line, since even every " + line + " is too few";
      case 1 -> "attach at every " + line;
      default ->
          "attach at every "
              + ordinal(seams)
              + " "
              + line
              + " ("
              + QuantityPrint.text(seams * pitch.m(), pitch.unit())
              + ") or closer";
    };
  }

  private static String ordinal(int n) {
    return n == 2 ? "second" : n == 3 ? "third" : n + "th";
  }

  private List<Held> distinct(Collection<Attachment> attachments) {
    Set<List<Alike>> seen = new HashSet<>();
    List<Held> distinct = new ArrayList<>();
    for (Attachment attachment : attachments) {
      List<ModuleEdge> edges = shares.of(attachment).stream().map(Share::edge).toList();
      if (!edges.isEmpty()
          && seen.add(edges.stream().map(edge -> alike(edge, attachment)).toList())) {
        distinct.add(new Held(attachment.alongM(), edges));
      }
    }
    return distinct;
  }

  private Alike alike(ModuleEdge edge, Attachment attachment) {
    var module = edge.module();
    long first = Math.round(firstM(attachment.alongM() - module.leftM(), pitchM) / ROUNDING_M);
    return new Alike(first, module.alongM(), module.upM(), loads.of(module));
  }

  /** The first of places so far apart that is not left of zero [m]. */
  private static double firstM(double placeM, double apartM) {
    return placeM - Math.floor(placeM / apartM) * apartM;
  }

  private boolean holds(List<Held> held, int seams) {
    for (Held each : held) {
      for (int phase = 0; phase < seams; phase++) {
        if (!holds(each, each.seamM + phase * pitchM, seams * pitchM)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Whether clamps so far apart hold the edges, one of them at a place of the roof. */
  private boolean holds(Held held, double placeM, double apartM) {
    Map<Long, List<Share>> byPlace = new HashMap<>();
    for (ModuleEdge edge : held.edges) {
      List<Double> clampsM = clampsM(edge, placeM, apartM);
      if (clampsM.size() < LEAST_CLAMPS) {
        return false;
      }
      for (Share share : shares.on(edge, clampsM)) {
        long place = Math.round((share.alongM() - placeM) / apartM);
        byPlace.computeIfAbsent(place, unseen -> new ArrayList<>(LEAST_CLAMPS)).add(share);
      }
    }
    return byPlace.values().stream().allMatch(this::carries);
  }

  private static List<Double> clampsM(ModuleEdge edge, double placeM, double apartM) {
    double leftM = edge.module().leftM();
    List<Double> clampsM = new ArrayList<>();
    for (double m = firstM(placeM - leftM, apartM); m <= edge.module().alongM(); m += apartM) {
      clampsM.add(leftM + m);
    }
    return clampsM;
  }

  private boolean carries(List<Share> own) {
    return Stream.of(true, false)
        .flatMap(up -> demands.worst(own, strengths, up).stream())
        .allMatch(used -> used.utilisation().together() <= FULL);
  }
}
