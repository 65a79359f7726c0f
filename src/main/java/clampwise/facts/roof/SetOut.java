package clampwise.facts.roof;

import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.FieldLayout;
import clampwise.source.Span;

/** Finds the written value that decides how far up the slope an attachment sits. */
final class SetOut {

  private SetOut() {}

  /** The point itself where points are written; else the block or column that set the line. */
  static Span at(FieldLayout field, Attachment attachment) {
    boolean points =
        field
            .field()
            .attach()
            .filter(attach -> !attach.points().isEmpty() || attach.file().isPresent())
            .isPresent();
    return points || attachment.grips().isEmpty()
        ? attachment.at()
        : attachment.grips().get(0).module().at();
  }
}
