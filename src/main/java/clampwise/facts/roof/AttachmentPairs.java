package clampwise.facts.roof;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Question;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlaneLayout;
import clampwise.job.Quantity;
import clampwise.job.RoofAttachment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Measures the room between neighbouring attachments on each seam of a plane, whichever fields they
 * belong to. Sorted along the seam, only neighbours can be the closest.
 */
final class AttachmentPairs implements Question {

  /** An attachment with the field that drew it. */
  private record Drawn(FieldLayout field, Attachment attachment) {

    boolean isWrittenBefore(Drawn other) {
      return attachment.at().compareTo(other.attachment.at()) <= 0;
    }
  }

  /** Two neighbours on a seam. */
  private record Pair(Drawn lower, Drawn upper, double leastM, boolean bodiesKnown) {

    double apartM() {
      return Snap.m(upper.attachment.upM() - lower.attachment.upM());
    }

    double roomM() {
      return Snap.m(apartM() - leastM);
    }

    Drawn first() {
      return lower.isWrittenBefore(upper) ? lower : upper;
    }

    Drawn second() {
      return lower.isWrittenBefore(upper) ? upper : lower;
    }
  }

  @Override
  public void ask(Layout layout, Limits limits, Answers answers) {
    PartLookup parts = new PartLookup(layout);
    Limit least = limits.get("attachment-distance-least");
    for (PlaneLayout plane : layout.planes()) {
      if (plane.seams().isEmpty()) {
        plane.fields().forEach(field -> missing(plane, field, answers));
      } else {
        bySeam(plane)
            .forEach((seam, drawn) -> ask(plane, pairs(drawn, parts, least), least, answers));
      }
    }
  }

  private static void missing(PlaneLayout plane, FieldLayout field, Answers answers) {
    answers.missing(
        AttachmentPair.class,
        RoofSubjects.field(field),
        plane.reading().seamsUnknown(),
        plane.plane().panel().at());
  }

  private static Map<Integer, List<Drawn>> bySeam(PlaneLayout plane) {
    Map<Integer, List<Drawn>> bySeam = new TreeMap<>();
    for (FieldLayout field : plane.fields()) {
      for (Attachment each : field.attachments()) {
        bySeam
            .computeIfAbsent(each.seam().orElseThrow().number(), seam -> new ArrayList<>())
            .add(new Drawn(field, each));
      }
    }
    return bySeam;
  }

  private static List<Pair> pairs(List<Drawn> drawn, PartLookup parts, Limit least) {
    drawn.sort(Comparator.comparingDouble(each -> each.attachment.upM()));
    return IntStream.range(1, drawn.size())
        .mapToObj(n -> pair(drawn.get(n - 1), drawn.get(n), parts, least))
        .toList();
  }

  private static Pair pair(Drawn lower, Drawn upper, PartLookup parts, Limit least) {
    Optional<Double> below = bodyM(lower.attachment, parts);
    Optional<Double> above = bodyM(upper.attachment, parts);
    return below.isPresent() && above.isPresent()
        ? new Pair(lower, upper, Snap.m((below.get() + above.get()) / 2), true)
        : new Pair(lower, upper, least.si(), false);
  }

  private static Optional<Double> bodyM(Attachment attachment, PartLookup parts) {
    return attachment
        .part()
        .flatMap(parts::find)
        .flatMap(RoofAttachment::bodyLength)
        .map(Quantity.Length::m);
  }

  private static void ask(PlaneLayout plane, List<Pair> pairs, Limit least, Answers answers) {
    pairs.stream()
        .min(Comparator.comparingDouble(Pair::roomM))
        .map(closest -> fact(plane, closest, pairs, least))
        .ifPresent(answers::add);
  }

  private static AttachmentPair fact(
      PlaneLayout plane, Pair closest, List<Pair> pairs, Limit least) {
    Drawn second = closest.second();
    String on = second.attachment.seam().orElseThrow().name();
    return new AttachmentPair(
        RoofSubjects.plane(plane).part("attachments of " + on),
        RoofSubjects.field(second.field).part("attachments"),
        second.attachment.at(),
        Shown.small(Shown.of(second.field)),
        closest.first().attachment.name(),
        second.attachment.name(),
        on,
        (int) pairs.stream().filter(pair -> pair.roomM() < 0).count(),
        closest.apartM(),
        closest.leastM,
        closest.bodiesKnown ? "their bodies need" : "the body of one is not known, and bodies need",
        closest.bodiesKnown ? Optional.empty() : Optional.of(least));
  }
}
