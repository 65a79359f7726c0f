package clampwise.facts.weight;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.ModuleEdge;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Holds the weight on each attachment against the expedited path. */
final class ExpeditedAttachments {

  private static final String WHAT = "weight on an attachment";

  private ExpeditedAttachments() {}

  static void ask(ExpeditedPath path) {
    Optional<String> unknown =
        path.asked().field().attachmentsUnknown().or(path.asked()::weightUnknown);
    if (unknown.isPresent()) {
      path.missing(ExpeditedAttachment.class, WHAT, unknown.get());
    } else {
      weights(path.asked()).entrySet().stream()
          .max(Map.Entry.comparingByValue())
          .ifPresent(heaviest -> path.add(fact(path, heaviest)));
    }
  }

  private static Map<String, Double> weights(WeighedField asked) {
    Map<String, Double> weights = new LinkedHashMap<>();
    for (ModuleEdge edge : asked.field().edges()) {
      for (Attachment each : edge.attachments()) {
        double shareN = asked.weight(edge.module().type()).perClampN(edge.attachments().size());
        weights.merge(each.name(), shareN, Double::sum);
      }
    }
    return weights;
  }

  private static ExpeditedAttachment fact(ExpeditedPath path, Map.Entry<String, Double> heaviest) {
    Limit most = path.limit("expedited-attachment-weight-most");
    return new ExpeditedAttachment(
        path.subject(WHAT),
        ExpeditedPath.cause(WHAT),
        path.at(),
        most.unit(),
        heaviest.getKey(),
        Snap.m(heaviest.getValue()),
        Snap.m(most.si()),
        Optional.of(most));
  }
}
