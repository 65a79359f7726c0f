package clampwise.facts.roof;

import clampwise.catalogue.AttachmentFits;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Fact;
import clampwise.facts.Question;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.job.SeamClamp;
import clampwise.source.Span;
import java.util.Optional;

/** A question that is asked of every seam clamp and rib bracket on its covering. */
abstract class PartQuestion implements Question {

  private final Class<? extends Fact> type;

  PartQuestion(Class<? extends Fact> type) {
    this.type = type;
  }

  @Override
  public final void ask(Layout layout, Limits limits, Answers answers) {
    PartUses.of(layout).forEach(use -> ask(use, new Asked(layout, limits, answers)));
    PartUses.fieldsWithoutPart(layout).forEach(field -> withoutPart(field, layout, answers));
  }

  /** What a question may look at and where its answers go. */
  record Asked(Layout layout, Limits limits, Answers answers) {

    /**
     * Parts of job and catalogue that fit the covering of a use, the strongest first, or why none.
     */
    Optional<String> fitting(PartUse use) {
      return Optional.of(
          AttachmentFits.of(layout.catalogue().with(layout.job()), use.panel())
              .without(use.name().value())
              .told(instead(use)));
    }

    private static String instead(PartUse use) {
      return use.part() instanceof SeamClamp ? "another seam clamp" : "another rib bracket";
    }
  }

  abstract void ask(PartUse use, Asked asked);

  final void missing(PartUse use, Asked asked, String reason, Span at) {
    asked.answers().missing(type, use.subject(), reason, at);
  }

  private void withoutPart(FieldLayout field, Layout layout, Answers answers) {
    String reason =
        layout
            .job()
            .unreadable()
            .unwritten(
                "field " + field.name() + " names no seam clamp or rib bracket",
                "the attachment of field " + field.name(),
                "fields",
                field.name(),
                "attachment");
    answers.missing(type, RoofSubjects.field(field), reason, field.at());
  }
}
