package clampwise.facts.roof;

import clampwise.facts.layout.Layout;
import clampwise.job.LengthRange;
import clampwise.job.Panel;
import clampwise.job.Quantity.Length;
import clampwise.job.RibBracket;
import clampwise.job.RoofAttachment;
import clampwise.job.SeamClamp;
import clampwise.job.Tested;
import java.util.Optional;
import java.util.stream.Collectors;

/** Names the parts that would fit a covering, for remedies. */
final class FittingParts {

  private static final int MOST_NAMES = 3;

  private FittingParts() {}

  /** Names of up to three parts that suit profile, sizes and metal as far as they are known. */
  static Optional<String> names(Layout layout, Panel panel) {
    String names =
        new PartLookup(layout)
            .all().values().stream()
                .filter(item -> fits(item.value(), panel))
                .map(item -> item.name().value())
                .sorted()
                .limit(MOST_NAMES)
                .collect(Collectors.joining(" or "));
    return Optional.of(names).filter(text -> !text.isEmpty());
  }

  private static boolean fits(RoofAttachment part, Panel panel) {
    return Profiles.suitsKind(part, panel)
        && Profiles.listed(part.profiles(), panel.profile())
        && fitsSize(part, panel)
        && fitsBearing(part, panel)
        && fitsMetal(part, panel);
  }

  private static boolean fitsSize(RoofAttachment part, Panel panel) {
    if (part instanceof SeamClamp clamp) {
      return within(clamp.seamHeight(), panel.height())
          && within(clamp.seamWidth(), panel.topWidth());
    }
    RibBracket bracket = (RibBracket) part;
    return within(bracket.ribHeight(), panel.height())
        && within(bracket.ribTop(), panel.topWidth());
  }

  private static boolean within(Optional<LengthRange> range, Optional<Length> length) {
    return range.isEmpty() || length.map(given -> range.get().contains(given.m())).orElse(true);
  }

  private static boolean fitsBearing(RoofAttachment part, Panel panel) {
    boolean onFlat =
        part instanceof RibBracket bracket
            && bracket.bearsOn().filter(b -> b.value() == RibBracket.Bearing.FLAT).isPresent();
    return !onFlat || panel.kind().value() != Panel.Kind.CORRUGATED || panel.topWidth().isPresent();
  }

  private static boolean fitsMetal(RoofAttachment part, Panel panel) {
    return part.tested().isEmpty()
        || panel.metal().isEmpty()
        || part.tested().stream()
            .map(Tested::metal)
            .anyMatch(metal -> metal.value() == panel.metal().get().value());
  }
}
