package clampwise.facts.weight;

import clampwise.catalogue.Limit;
import clampwise.facts.layout.FieldLayout;
import clampwise.finding.Subject;
import clampwise.units.Unit;
import java.util.Optional;

/** Counts the attachments of each field over its modules. */
final class AttachmentCounts {

  private AttachmentCounts() {}

  static void ask(WeighedField asked) {
    Optional<String> unknown = asked.field().attachmentsUnknown();
    if (unknown.isPresent()) {
      asked.missing(AttachmentsPerModule.class, unknown.get(), asked.field().at());
    } else if (!asked.field().modules().isEmpty()) {
      asked.answers().add(fact(asked));
    }
  }

  private static AttachmentsPerModule fact(WeighedField asked) {
    FieldLayout field = asked.field();
    Limit least = asked.limits().get("attachments-per-module-least");
    Limit most = asked.limits().get("attachments-per-module-most");
    double perModule = (double) field.attachments().size() / field.modules().size();
    Limit nearer = perModule - least.si() < most.si() - perModule ? least : most;
    Subject cause = asked.subject().part("attach");
    return new AttachmentsPerModule(
        asked.subject().part("attachments per module"),
        cause,
        field.attachments().stream().findFirst().map(each -> each.at()).orElse(field.at()),
        Unit.NUMBER,
        field.name(),
        field.attachments().size(),
        field.modules().size(),
        field.modules().stream().mapToInt(module -> module.row()).distinct().count() == 1,
        perModule,
        least.si(),
        most.si(),
        nearer.si(),
        Optional.of(nearer));
  }
}
