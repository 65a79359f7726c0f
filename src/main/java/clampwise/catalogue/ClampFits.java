package clampwise.catalogue;

import clampwise.calc.Snap;
import clampwise.catalogue.Fits.Need;
import clampwise.job.LengthRange;
import clampwise.job.ModuleClamp;
import clampwise.job.Quantity.Length;
import clampwise.units.QuantityPrint;
import clampwise.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Finds mid and end clamps that suit frames and gaps, the one whose range a frame sits most
 * centrally in first.
 */
public final class ClampFits {

  private final Catalogue catalogue;
  private final List<Need<ModuleClamp>> needs = new ArrayList<>();
  private double frameHeightM = Double.NaN;
  private double acrossM;

  private ClampFits(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** Clamps of a catalogue of which nothing is wanted yet. */
  public static ClampFits in(Catalogue catalogue) {
    return new ClampFits(catalogue);
  }

  /** Mid clamps for a frame height; bonding ones where the clamp has to bond the frames. */
  public static Fits mid(Catalogue catalogue, double frameHeightM, boolean bonding) {
    return in(catalogue).gripping(frameHeightM, Unit.MILLIMETRE).bonding(bonding).mid();
  }

  /** End clamps for a frame height, as for mid clamps. */
  public static Fits end(Catalogue catalogue, double frameHeightM, boolean bonding) {
    return in(catalogue).gripping(frameHeightM, Unit.MILLIMETRE).bonding(bonding).end();
  }

  /** That grip frames of a height. */
  public ClampFits gripping(double heightM, Unit unit) {
    this.frameHeightM = heightM;
    return need(
        "the frame height, " + QuantityPrint.text(heightM, unit),
        clamp -> clamp.frameHeight().filter(range -> range.contains(heightM)).isPresent());
  }

  /** That are rated to bond, if that is wanted. */
  public ClampFits bonding(boolean wanted) {
    return wanted
        ? need("bonding", clamp -> clamp.bonding().filter(flag -> flag.value()).isPresent())
        : this;
  }

  /** That hold frames so far apart. */
  public ClampFits across(double gapM) {
    this.acrossM = gapM;
    return need(
        "the row gap", clamp -> isWithin(gapM, clamp.gap(), clamp.gapAtMost().or(clamp::gap)));
  }

  /** That reach over a frame in that gap by so much, and no further than to the glass. */
  public ClampFits reaching(double leastM, double mostM) {
    return need(
        "how far it reaches over the frame",
        clamp ->
            clamp.gripDepth().filter(m -> m.m() <= mostM).isPresent() && gripM(clamp) >= leastM);
  }

  /** A gap wider than the clamp sets it takes half of the rest from each side. */
  private double gripM(ModuleClamp clamp) {
    double setM = clamp.gap().map(Length::m).orElse(acrossM);
    double lostM = Math.max(0, acrossM - setM) / 2;
    return Snap.m(clamp.gripDepth().map(Length::m).orElse(0.0) - lostM);
  }

  private static boolean isWithin(double gapM, Optional<Length> least, Optional<Length> most) {
    return least.filter(length -> gapM >= length.m()).isPresent()
        && most.filter(length -> gapM <= length.m()).isPresent();
  }

  private ClampFits need(String property, Predicate<ModuleClamp> met) {
    needs.add(new Need<>(property, met));
    return this;
  }

  public Fits mid() {
    return Fits.of(catalogue.parts().midClamps(), needs, this::fromMiddleM);
  }

  public Fits end() {
    return Fits.of(catalogue.parts().endClamps(), needs, this::fromMiddleM);
  }

  private double fromMiddleM(ModuleClamp clamp) {
    return clamp
        .frameHeight()
        .filter(range -> !Double.isNaN(frameHeightM))
        .map(range -> Math.abs(middleM(range) - frameHeightM))
        .orElse(0.0);
  }

  private static double middleM(LengthRange range) {
    return (range.min().m() + range.max().m()) / 2;
  }
}
