package clampwise.facts.layout;

import clampwise.catalogue.Fits;
import clampwise.catalogue.Fits.Need;
import clampwise.job.BondingPart;
import clampwise.job.Flag;
import clampwise.job.Named;
import clampwise.job.Text;
import clampwise.units.QuantityPrint;
import clampwise.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Jumpers to use in place of one that does not do. */
public final class JumperFits {

  private JumperFits() {}

  /** Those that bond, were tested for the fuse of the modules, and meet further needs. */
  public static String told(
      Layout layout,
      Text instead,
      List<Need<BondingPart>> further,
      ToDoubleFunction<BondingPart> last) {
    Named<BondingPart> shelf = layout.catalogue().with(layout.job()).parts().jumpers();
    List<Need<BondingPart>> needs = new ArrayList<>();
    needs.add(new Need<>("bonding", part -> part.bonding().map(Flag::value).orElse(true)));
    needs.addAll(further);
    double fuseA = fuseA(layout);
    if (fuseA > 0) {
      String property = "the series fuse, " + QuantityPrint.text(fuseA, Units.AMPERE);
      needs.add(
          new Need<>(
              property, part -> part.seriesFuseAtMost().filter(a -> a.a() >= fuseA).isPresent()));
    }
    return Fits.of(shelf, needs, last).without(instead.value()).told("another jumper");
  }

  /** The largest series fuse of the modules, as far as it is known; else 0. */
  private static double fuseA(Layout layout) {
    return layout.fields().stream()
        .flatMap(field -> field.type().electrical().stream())
        .flatMap(electrical -> electrical.seriesFuseAtMost().stream())
        .mapToDouble(fuse -> fuse.a())
        .max()
        .orElse(0);
  }
}
