package clampwise.catalogue;

import clampwise.catalogue.Fits.Need;
import clampwise.catalogue.Fits.Sieved;
import clampwise.job.ModuleClamp;
import clampwise.job.Named;
import clampwise.job.Named.Item;
import java.util.Comparator;
import java.util.List;

/** Finds mid and end clamps that grip a frame. */
public final class ClampFits {

  private ClampFits() {}

  /**
   * Mid clamps for a frame height, the one whose range the frame sits most centrally in first.
   *
   * @param bonding whether the clamp has to bond the frames
   */
  public static Fits mid(Catalogue catalogue, double frameHeightM, boolean bonding) {
    return of(catalogue.parts().midClamps(), frameHeightM, bonding);
  }

  /** End clamps for a frame height, as for mid clamps. */
  public static Fits end(Catalogue catalogue, double frameHeightM, boolean bonding) {
    return of(catalogue.parts().endClamps(), frameHeightM, bonding);
  }

  private static Fits of(Named<ModuleClamp> clamps, double frameHeightM, boolean bonding) {
    List<Need<Item<ModuleClamp>>> needs =
        List.of(
            new Need<>("frame height", clamp -> grips(clamp.value(), frameHeightM)),
            new Need<>("bonding", clamp -> !bonding || bonds(clamp.value())));
    Sieved<Item<ModuleClamp>> sieved = Fits.sieve(List.copyOf(clamps.all()), needs);
    Comparator<Item<ModuleClamp>> central =
        Comparator.comparingDouble(clamp -> fromMiddleM(clamp.value(), frameHeightM));
    List<String> names =
        sieved.left().stream().sorted(central).map(clamp -> clamp.name().value()).toList();
    return new Fits(names, sieved.obstacle());
  }

  private static boolean grips(ModuleClamp clamp, double frameHeightM) {
    return clamp.frameHeight().filter(range -> range.contains(frameHeightM)).isPresent();
  }

  private static boolean bonds(ModuleClamp clamp) {
    return clamp.bonding().filter(flag -> flag.value()).isPresent();
  }

  private static double fromMiddleM(ModuleClamp clamp, double frameHeightM) {
    return clamp
        .frameHeight()
        .map(range -> Math.abs((range.min().m() + range.max().m()) / 2 - frameHeightM))
        .orElse(Double.MAX_VALUE);
  }
}
