package clampwise.facts.durability;

import clampwise.calc.Snap;
import clampwise.calc.corrosion.CorrosionLoss.Later;
import clampwise.calc.trail.Table;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.ModuleClamp;
import clampwise.job.Screws;
import clampwise.job.Site.Corrosivity;
import clampwise.job.SurfaceMetal;
import clampwise.job.Text;
import clampwise.units.Units;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Holds screws of carbon steel against the air of the site. */
final class ScrewMetals {

  private static final Subject PARTS = Subject.of("parts");

  private final Weathering weathering;
  private final Map<Text, Choice<SurfaceMetal>> metals = new LinkedHashMap<>();

  ScrewMetals(Weathering weathering) {
    this.weathering = weathering;
  }

  /** Metals that no part gives are told where it is asked what touches the sheet. */
  void ask() {
    for (UsedPart used : UsedPart.all(weathering)) {
      ask(used.name(), used.part().screws());
    }
    for (ClampInUse used : ClampInUse.all(weathering)) {
      ask(used.name(), used.part().flatMap(ModuleClamp::screws));
    }
    if (metals.isEmpty()) {
      return;
    }
    Optional<Air> air = Air.of(weathering);
    if (air.isPresent()) {
      metals.forEach((name, metal) -> weathering.add(fact(name, metal, air.get())));
    } else {
      weathering.missing(ScrewInAir.class, PARTS, Air.unknown(weathering));
    }
  }

  private void ask(Text name, Optional<Screws> screws) {
    screws
        .flatMap(Screws::metal)
        .filter(metal -> row(metal).isPresent())
        .ifPresent(metal -> metals.putIfAbsent(name, metal));
  }

  private Optional<Table.Row> row(Choice<SurfaceMetal> metal) {
    return weathering.metals("screw-metals").row("metal", metal.toString());
  }

  private ScrewInAir fact(Text name, Choice<SurfaceMetal> metal, Air air) {
    Table.Row row = row(metal).orElseThrow();
    Corrosivity most = Corrosivity.valueOf(row.word("class"));
    String eaten = row.word("eaten");
    double timeS = RoofLives.arrayLife(weathering).s();
    return new ScrewInAir(
        PARTS.part(name.value()).part("screws"),
        PARTS.part("screws of " + metal),
        name.at(),
        Units.MICROMETRE,
        Map.of("timeS", Units.YEAR),
        parts(metal),
        metal.value() == SurfaceMetal.STEEL ? "carbon steel" : Surface.words(metal.value()),
        air.word(),
        air.from(),
        air.rank(),
        Choice.word(most),
        Air.rank(most),
        eaten,
        lossM(eaten, air, Units.YEAR.fromSi(timeS)),
        timeS);
  }

  private double lossM(String eaten, Air air, double years) {
    return Snap.m(MetalLoss.of(weathering, eaten, air).lossM(years, Later.STEADY));
  }

  private String parts(Choice<SurfaceMetal> metal) {
    List<String> names =
        metals.entrySet().stream()
            .filter(other -> other.getValue().value() == metal.value())
            .map(other -> other.getKey().value())
            .distinct()
            .toList();
    return Unsaid.joined(names);
  }
}
