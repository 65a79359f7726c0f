package clampwise.facts.roof;

import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.job.Quantity.Length;
import clampwise.job.RoofAttachment;
import java.util.Optional;

/**
 * The least distance from a panel's end or lap: the part's own, else that of practice.
 *
 * @param limit the limit of practice, if the part states none
 */
record LeastFromEnd(double leastM, Optional<Limit> limit) {

  static LeastFromEnd of(AttachmentRow row, Limits limits) {
    return row.part()
        .flatMap(RoofAttachment::fromPanelEnd)
        .map(Length::m)
        .map(leastM -> new LeastFromEnd(leastM, Optional.empty()))
        .orElseGet(() -> ofPractice(limits.get("panel-end-distance-least")));
  }

  private static LeastFromEnd ofPractice(Limit limit) {
    return new LeastFromEnd(limit.si(), Optional.of(limit));
  }
}
