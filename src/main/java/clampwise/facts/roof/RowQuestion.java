package clampwise.facts.roof;

import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Question;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlaneLayout;

/** A question that is asked of every line of attachments. */
abstract class RowQuestion implements Question {

  @Override
  public final void ask(Layout layout, Limits limits, Answers answers) {
    PartLookup parts = new PartLookup(layout);
    for (PlaneLayout plane : layout.planes()) {
      for (FieldLayout field : plane.fields()) {
        AttachmentRow.of(plane, field, parts).forEach(row -> ask(row, limits, answers));
      }
    }
  }

  abstract void ask(AttachmentRow row, Limits limits, Answers answers);
}
