package clampwise.facts.roof;

import clampwise.catalogue.SheetThickness;
import clampwise.facts.roof.LeastSheets.Least;
import clampwise.job.Choice;
import clampwise.job.Metal;
import clampwise.job.Quantity.Thickness;
import clampwise.units.QuantityPrint;
import clampwise.units.Unit;
import java.util.Optional;

/** Holds the sheet of each covering against the thinnest one each part may hold to. */
final class SheetFits extends PartQuestion {

  SheetFits() {
    super(SheetFit.class);
  }

  @Override
  void ask(PartUse use, Asked asked) {
    Optional<Thickness> thickness = use.panel().thickness();
    if (thickness.isEmpty()) {
      String reason = use.ofPanel("the thickness of " + covering(use), "thickness");
      missing(use, asked, reason, use.panelAt());
    } else if (use.panel().metal().isEmpty()) {
      missing(use, asked, TestReasons.noMetal(use), use.panelAt());
    } else {
      answer(use, thickness.get(), use.panel().metal().get().value(), asked);
    }
  }

  private void answer(PartUse use, Thickness written, Metal metal, Asked asked) {
    Optional<Double> thicknessM = SheetThickness.baseM(written, metal);
    Optional<Least> least = LeastSheets.of(use, metal, asked.limits());
    if (thicknessM.isEmpty()) {
      missing(use, asked, sheet(written, metal) + " is no gauge we know", written.at());
    } else if (least.isEmpty()) {
      String reason = use.ofPart("the thinnest sheet for " + use.name(), "thickness-at-least");
      missing(use, asked, reason, use.partAt());
    } else {
      asked.answers().add(fact(use, sheet(written, metal), thicknessM.get(), least.get(), asked));
    }
  }

  private static SheetFit fact(
      PartUse use, String sheet, double thicknessM, Least least, Asked asked) {
    Thickness written = use.panel().thickness().orElseThrow();
    return new SheetFit(
        use.subject(),
        use.cause(),
        use.name().at(),
        written.isGauge() ? Unit.INCH : written.unit(),
        use.name().value(),
        covering(use),
        sheet,
        least.levelled(thicknessM),
        least.leastM(),
        least.from(),
        least.limit(),
        asked.fitting(use));
  }

  private static String sheet(Thickness written, Metal metal) {
    String thickness = QuantityPrint.text(written.si(), written.unit());
    return thickness + " " + Choice.word(metal).replace('-', ' ');
  }

  private static String covering(PartUse use) {
    return use.plane().panelName();
  }
}
