package clampwise.facts.fire;

import clampwise.calc.Outcome;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import clampwise.source.Span;
import clampwise.units.QuantityPrint;
import clampwise.units.Units;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Modules of a plane that would have to be left out, with the coverage that then results. */
record Dropped(PlaneLayout plane, List<PlacedModule> modules) {

  Dropped {
    modules = modules.stream().sorted(Comparator.comparing(PlacedModule::name)).toList();
  }

  /** In words, such as {@code leave out A.R1C1 to A.R4C1 (4 modules); 28 % ... then covered}. */
  String words(Outcome<Coverage> coverage) {
    return "leave out " + ShortNames.of(modules) + " (" + count() + ")" + then(coverage);
  }

  private String count() {
    return modules.size() == 1 ? "1 module" : modules.size() + " modules";
  }

  private String then(Outcome<Coverage> coverage) {
    return coverage
        .result()
        .map(known -> known.shareWithout(plane, modules))
        .map(share -> ", so that " + QuantityPrint.text(share, Units.PERCENT) + " of the roof")
        .map(share -> share + " is covered in plan")
        .orElse("");
  }

  /** Where the first of them was placed. */
  Optional<Span> at() {
    return modules.stream().map(PlacedModule::at).min(Comparator.naturalOrder());
  }
}
