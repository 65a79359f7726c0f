package clampwise.facts.durability;

import clampwise.calc.Snap;
import clampwise.calc.corrosion.CorrosionLoss;
import clampwise.calc.corrosion.CorrosionLoss.Later;
import clampwise.calc.corrosion.ZincCoating;
import clampwise.calc.trail.Chain;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Section;
import clampwise.calc.trail.Work;
import clampwise.catalogue.Limit;
import clampwise.catalogue.SheetCoating;
import clampwise.facts.Subjects;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Panel;
import clampwise.job.Quantity.Years;
import clampwise.job.Roof;
import clampwise.job.Text;
import clampwise.units.QuantityPrint;
import clampwise.units.Units;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Asks how long the zinc of bare galvanised sheets lasts. */
record ZincLives(Weathering weathering, Roof roof) {

  private static final String HEAVIER =
      "use a heavier coating, Al-Zn or paint, or renew the roof before the array";
  private static final String GONE = "look for red rust, and paint or renew the roof first";

  void ask() {
    for (PlaneLayout plane : new Sheets(weathering).underModules()) {
      Optional<Text> written = plane.panel().flatMap(Panel::coating);
      Optional<SheetCoating> coating = written.flatMap(text -> SheetCoating.of(text.value()));
      if (coating.filter(SheetCoating::isZinc).isPresent() && !Sheets.isPainted(plane)) {
        ask(plane, written.orElseThrow(), coating.get());
      }
    }
  }

  private void ask(PlaneLayout plane, Text written, SheetCoating coating) {
    Subject subject = Subjects.panel(plane.panelName()).part("zinc");
    Optional<Double> mass = coating.gramsPerM2(weathering.metals("zinc-coatings"));
    Optional<Air> air = Air.of(weathering);
    if (mass.isEmpty()) {
      weathering.missing(
          ZincLife.class, subject, "the mass of coating " + written + " is not known");
    } else if (air.isEmpty()) {
      weathering.missing(ZincLife.class, subject, Air.unknown(weathering));
    } else if (roof.age().isEmpty()) {
      weathering.missing(ZincLife.class, subject, RoofLives.noAge(weathering));
    } else {
      weathering.add(fact(plane, written, mass.get(), air.get()));
    }
  }

  private ZincLife fact(PlaneLayout plane, Text written, double mass, Air air) {
    Years age = roof.age().orElseThrow();
    double timeS = age.s() + RoofLives.arrayLife(weathering, roof).s();
    double years = Units.YEAR.fromSi(timeS);
    CorrosionLoss loss = MetalLoss.of(weathering, "zinc", air);
    double hasM = new ZincCoating(mass).sideM(density().si());
    double lastsS = Units.YEAR.toSi(loss.years(hasM, Later.STEADY));
    return new ZincLife(
        Subjects.panel(plane.panelName()).part("zinc"),
        written.at(),
        Units.MICROMETRE,
        Map.of("timeS", Units.YEAR, "lastsS", Units.YEAR),
        plane.panelName(),
        written.value(),
        air.word(),
        timeS,
        Snap.m(loss.lossM(years, Later.STEADY)),
        Snap.m(hasM),
        lastsS,
        course(lastsS - age.s()),
        lastsS < age.s() ? GONE : HEAVIER,
        Optional.of((Chain) () -> sections(loss, years, mass)));
  }

  private static String course(double leftS) {
    String years = QuantityPrint.text(Math.abs(leftS), Units.YEAR);
    return leftS < 0 ? "it went " + years + " ago" : "it goes in " + years;
  }

  private Limit density() {
    return weathering.limit("zinc-density");
  }

  private List<Section> sections(CorrosionLoss loss, double years, double mass) {
    Work work = new Work(Measure.METRIC);
    new ZincCoating(mass).show(density().si(), density().source(), work);
    loss.show(years, Later.STEADY, work);
    return List.of(new Section("Zinc over the years", work.measure(), work.lines(), true));
  }
}
