package clampwise.facts.roof;

import clampwise.catalogue.AttachmentFits;
import clampwise.facts.layout.Layout;
import clampwise.job.Panel;
import java.util.List;
import java.util.Optional;

/** Names the parts that would fit a covering, for remedies. */
final class FittingParts {

  private static final int MOST_NAMES = 3;

  private FittingParts() {}

  /** Names of up to three parts of job and catalogue that fit a covering, the strongest first. */
  static Optional<String> names(Layout layout, Panel panel) {
    List<String> names = AttachmentFits.of(layout.catalogue().with(layout.job()), panel).names();
    return names.isEmpty()
        ? Optional.empty()
        : Optional.of(String.join(" or ", names.subList(0, Math.min(MOST_NAMES, names.size()))));
  }
}
