package clampwise.facts.loads;

import clampwise.calc.statics.Beam;
import clampwise.calc.statics.BeamForces;
import clampwise.calc.statics.Tributary;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.ModuleEdge;
import clampwise.facts.layout.PlacedModule;
import clampwise.job.Flag;
import clampwise.job.Loads;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which part of which modules each attachment of a field carries: half of a module goes to each of
 * its supported edges; the edge is a beam on its clamps.
 */
final class Shares {

  private static final int LEAST_CLAMPS = 2;
  private static final double ROUNDING_M = 1e-9;

  private final Map<String, List<Share>> byAttachment = new HashMap<>();
  private final Set<String> tipping = new HashSet<>();
  private final Map<Beams, double[]> known = new HashMap<>();
  private final boolean even;

  /**
   * The part of one module edge that an attachment carries.
   *
   * @param edge the module edge
   * @param alongM where the attachment stands along the eave [m]
   * @param areaM2 area of module whose load it carries by beam theory; negative for prying [m²]
   * @param tributaryM2 the same by tributary width [m²]
   */
  record Share(ModuleEdge edge, double alongM, double areaM2, double tributaryM2) {

    PlacedModule module() {
      return edge.module();
    }
  }

  private record Beams(double lengthM, List<Double> clampsM) {}

  private Shares(boolean even) {
    this.even = even;
  }

  static Shares of(FieldSite site) {
    Shares shares = new Shares(site.loads(Loads::clampsShareEdge).filter(Flag::value).isPresent());
    FieldLayout field = site.field();
    field.edges().forEach(shares::add);
    return shares;
  }

  /** What an attachment carries; nothing if it holds no module. */
  List<Share> of(Attachment attachment) {
    return byAttachment.getOrDefault(attachment.name(), List.of());
  }

  /** Whether all clamps of an edge share its load evenly, because the job says so. */
  boolean areEven() {
    return even;
  }

  /** Whether an attachment is the only one on a module edge, whose load is then not known. */
  boolean isAlone(Attachment attachment) {
    return tipping.contains(attachment.name());
  }

  private void add(ModuleEdge edge) {
    List<Attachment> clamps = edge.attachments();
    if (clamps.size() < LEAST_CLAMPS) {
      clamps.forEach(clamp -> tipping.add(clamp.name()));
      return;
    }
    List<Share> own = on(edge, clamps.stream().map(Attachment::alongM).toList());
    for (int i = 0; i < clamps.size(); i++) {
      byAttachment
          .computeIfAbsent(clamps.get(i).name(), name -> new ArrayList<>(2))
          .add(own.get(i));
    }
  }

  /** What each of two or more clamps on an edge carries, by their places along the eave [m]. */
  List<Share> on(ModuleEdge edge, List<Double> clampsM) {
    PlacedModule module = edge.module();
    double[] placesM = clampsM.stream().mapToDouble(m -> m - module.leftM()).toArray();
    double[] shareM = shareM(module.alongM(), placesM);
    double[] widthsM = Tributary.widthsM(0, module.alongM(), placesM);
    double halfM = module.upM() / 2;
    List<Share> own = new ArrayList<>(placesM.length);
    for (int i = 0; i < placesM.length; i++) {
      own.add(new Share(edge, clampsM.get(i), shareM[i] * halfM, widthsM[i] * halfM));
    }
    return own;
  }

  /** Length of edge whose even load each clamp carries [m]. */
  private double[] shareM(double lengthM, double[] placesM) {
    if (even) {
      double[] equal = new double[placesM.length];
      Arrays.fill(equal, lengthM / placesM.length);
      return equal;
    }
    List<Double> rounded = Arrays.stream(placesM).map(Shares::rounded).boxed().toList();
    return known.computeIfAbsent(
        new Beams(rounded(lengthM), rounded),
        key ->
            new Beam(0, lengthM, placesM)
                .under(1.0)
                .result()
                .map(BeamForces::reactionsN)
                .orElseGet(() -> Tributary.widthsM(0, lengthM, placesM)));
  }

  private static double rounded(double m) {
    return Math.rint(m / ROUNDING_M) * ROUNDING_M;
  }
}
