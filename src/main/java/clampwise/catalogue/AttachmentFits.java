package clampwise.catalogue;

import clampwise.catalogue.Fits.Need;
import clampwise.catalogue.Fits.Sieved;
import clampwise.job.Choice;
import clampwise.job.LengthRange;
import clampwise.job.Metal;
import clampwise.job.Named.Item;
import clampwise.job.Panel;
import clampwise.job.Panel.Kind;
import clampwise.job.Quantity;
import clampwise.job.Quantity.Length;
import clampwise.job.RibBracket;
import clampwise.job.RoofAttachment;
import clampwise.job.SeamClamp;
import clampwise.units.QuantityPrint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Finds seam clamps and rib brackets that fit a roof covering. */
public final class AttachmentFits {

  private static final String KIND = "the kind of covering";
  private static final String PROFILE = "the profile";
  private static final String HEIGHT = "the height";
  private static final String TOP = "the top width";
  private static final String METAL = "the metal";
  private static final String THICKNESS = "the thickness";
  private static final String SUBSTRATE = "the substrate";

  private record Candidate(String name, RoofAttachment part) {}

  private AttachmentFits() {}

  /**
   * Attachments for a covering, the one with the highest tested uplift load there first. What is
   * not known of the covering excludes nothing.
   */
  public static Fits of(Catalogue catalogue, Panel panel) {
    Sieved<Candidate> sieved = Fits.sieve(candidates(catalogue), needs(panel));
    Comparator<Candidate> strongest =
        Comparator.comparingDouble((Candidate c) -> -TestedRows.mostUpN(panel, c.part()))
            .thenComparing(Candidate::name);
    List<String> names = sieved.left().stream().sorted(strongest).map(Candidate::name).toList();
    return new Fits(names, sieved.obstacle().map(property -> told(property, panel)));
  }

  private static List<Candidate> candidates(Catalogue catalogue) {
    List<Candidate> all = new ArrayList<>();
    for (Item<SeamClamp> clamp : catalogue.parts().seamClamps().all()) {
      all.add(new Candidate(clamp.name().value(), clamp.value()));
    }
    for (Item<RibBracket> bracket : catalogue.parts().ribBrackets().all()) {
      all.add(new Candidate(bracket.name().value(), bracket.value()));
    }
    return all;
  }

  private static List<Need<Candidate>> needs(Panel panel) {
    return List.of(
        need(KIND, part -> part instanceof SeamClamp == isSeamed(panel)),
        need(PROFILE, part -> hasProfile(part, panel)),
        need(HEIGHT, part -> within(height(part), panel.height())),
        need(TOP, part -> within(top(part), panel.topWidth())),
        need("a flat to bear on", part -> !(needsFlat(part) && isWave(panel))),
        need("the floating clips", part -> !(part.fixesPanel() && floats(panel))),
        need(METAL, part -> anyRow(part, row -> TestedRows.sameMetal(row, panel))),
        need(THICKNESS, part -> thickEnough(part, panel)),
        need(SUBSTRATE, part -> isTestedOn(part, panel)));
  }

  /** A property with what the covering has. */
  private static String told(String property, Panel panel) {
    Optional<?> value =
        switch (property) {
          case KIND -> Optional.of(panel.kind());
          case PROFILE -> panel.profile();
          case HEIGHT -> panel.height();
          case TOP -> panel.topWidth();
          case METAL -> panel.metal();
          case THICKNESS -> panel.thickness();
          case SUBSTRATE -> panel.substrate();
          default -> Optional.empty();
        };
    return property + value.map(AttachmentFits::after).orElse("");
  }

  private static String after(Object value) {
    String text = value.toString();
    if (value instanceof Quantity size) {
      text = QuantityPrint.text(size.si(), size.unit());
    } else if (value instanceof Choice<?>) {
      text = text.replace('-', ' ');
    }
    return ", " + text;
  }

  private static Need<Candidate> need(String property, Predicate<RoofAttachment> met) {
    return new Need<>(property, candidate -> met.test(candidate.part()));
  }

  private static boolean isSeamed(Panel panel) {
    return panel.kind().value() == Kind.STANDING_SEAM;
  }

  private static boolean isWave(Panel panel) {
    return panel.kind().value() == Kind.CORRUGATED && panel.topWidth().isEmpty();
  }

  private static boolean needsFlat(RoofAttachment part) {
    return part instanceof RibBracket bracket
        && bracket.bearsOn().filter(b -> b.value() == RibBracket.Bearing.FLAT).isPresent();
  }

  private static boolean floats(Panel panel) {
    return panel.clips().filter(c -> c.value() == Panel.Clips.FLOATING).isPresent();
  }

  private static boolean hasProfile(RoofAttachment part, Panel panel) {
    return panel.profile().isEmpty()
        || part.profiles().stream()
            .anyMatch(profile -> profile.value().equals(panel.profile().orElseThrow().value()));
  }

  private static Optional<LengthRange> height(RoofAttachment part) {
    return part instanceof SeamClamp clamp ? clamp.seamHeight() : ((RibBracket) part).ribHeight();
  }

  private static Optional<LengthRange> top(RoofAttachment part) {
    return part instanceof SeamClamp clamp ? clamp.seamWidth() : ((RibBracket) part).ribTop();
  }

  private static boolean within(Optional<LengthRange> range, Optional<Length> length) {
    return range.isEmpty() || length.isEmpty() || range.get().contains(length.get().m());
  }

  private static boolean anyRow(RoofAttachment part, Predicate<clampwise.job.Tested> holds) {
    return part.tested().isEmpty() || part.tested().stream().anyMatch(holds);
  }

  private static boolean thickEnough(RoofAttachment part, Panel panel) {
    Metal metal = panel.metal().map(given -> given.value()).orElse(Metal.STEEL);
    return TestedRows.thickEnough(part.thicknessAtLeast(), panel, metal)
        && anyRow(
            part, row -> TestedRows.sameMetal(row, panel) && TestedRows.thickEnough(row, panel));
  }

  private static boolean isTestedOn(RoofAttachment part, Panel panel) {
    return part.tested().isEmpty() || TestedRows.holdingFor(panel, part).findAny().isPresent();
  }
}
