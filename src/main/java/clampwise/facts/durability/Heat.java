package clampwise.facts.durability;

import clampwise.calc.Snap;
import clampwise.calc.thermal.Standoff;
import clampwise.calc.trail.Chain;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Section;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.facts.Subjects;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.weight.ClearSpace;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.ModuleType.TemperatureLevel;
import clampwise.job.Quantity.Temperature;
import clampwise.job.Site;
import clampwise.job.Site.ModuleTemperatures;
import clampwise.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Asks whether modules stay cool enough: in all the air they can have, and at their gap. */
final class Heat {

  /** A tenth of a millimetre, finer than anybody sets a gap. */
  private static final double STEPS_PER_METRE = 1e4;

  private final Weathering weathering;
  private final Optional<ModuleTemperatures> known;
  private final Optional<Standoff> standoff;

  Heat(Weathering weathering) {
    this.weathering = weathering;
    this.known = weathering.job().site().flatMap(Site::moduleTemperatures);
    this.standoff =
        known
            .flatMap(ModuleTemperatures::insulated)
            .flatMap(hot -> open().map(open -> new Standoff(hot.celsius(), open.celsius())));
  }

  private Optional<Temperature> open() {
    return known.flatMap(ModuleTemperatures::open);
  }

  void ask() {
    if (known.isPresent()) {
      open().ifPresentOrElse(this::askOpen, () -> missing(OpenRackHeat.class, "open"));
      standoff.ifPresentOrElse(known -> askGaps(), () -> missing(HeatGap.class, unknownKey()));
    } else if (weathering.job().roof().isPresent()) {
      missing(OpenRackHeat.class, "");
      missing(HeatGap.class, "");
    }
  }

  /** Whether a gap is known to leave the modules too hot. */
  boolean isGapTooSmall(FieldLayout field, ClearSpace space) {
    return standoff
        .filter(method -> method.openC() < limit(field).si())
        .filter(method -> space.m() < leastM(method, field))
        .isPresent();
  }

  private String unknownKey() {
    return open().isEmpty() ? "open" : "insulated";
  }

  private void missing(Class<? extends Fact> type, String key) {
    String reason =
        switch (key) {
          case "open" -> lacks("the module temperature in an open rack", key);
          case "insulated" -> lacks("the module temperature with an insulated back", key);
          default ->
              weathering.lacks("how hot modules get at the site", "site", "module-temperatures");
        };
    weathering.missing(type, Subject.of("site"), reason);
  }

  private String lacks(String what, String key) {
    return weathering.lacks(what, "site", "module-temperatures", key);
  }

  private void askOpen(Temperature open) {
    List<String> asked = new ArrayList<>();
    for (FieldLayout field : weathering.layout().fields()) {
      if (!asked.contains(field.typeName())) {
        asked.add(field.typeName());
        weathering.add(openRack(field, open));
      }
    }
  }

  private OpenRackHeat openRack(FieldLayout field, Temperature open) {
    Limit limit = limit(field);
    return new OpenRackHeat(
        Subject.of("modules").part(field.typeName()).part("heat"),
        field.field().module().at(),
        open.unit(),
        field.typeName(),
        Choice.word(level(field)).replace('-', ' '),
        open.celsius(),
        limit.si(),
        Optional.of(limit));
  }

  private static TemperatureLevel level(FieldLayout field) {
    return field.type().temperatureLevel().map(Choice::value).orElse(TemperatureLevel.STANDARD);
  }

  private Limit limit(FieldLayout field) {
    Table table = weathering.thermal("temperature-levels");
    String level = Choice.word(level(field));
    return new Limit(
        "module-temperature-" + level,
        table.row("level", level).orElseThrow().number("limit"),
        Units.CELSIUS,
        table.source().document(),
        table.source().edition(),
        table.source().clause(),
        table.source().obtained(),
        table.source().validity());
  }

  private void askGaps() {
    for (FieldLayout field : weathering.layout().fields()) {
      Subject subject = Subjects.field(field.name()).part("heat below");
      Standoff method = standoff.orElseThrow();
      Optional<ClearSpace> space = ClearSpace.of(field);
      if (space.isEmpty()) {
        weathering.missing(
            HeatGap.class, subject, ClearSpace.unknown(field, weathering.unreadable()));
      } else if (method.openC() < limit(field).si()) {
        weathering.add(gap(subject, field, space.get(), method));
      }
    }
  }

  private HeatGap gap(Subject subject, FieldLayout field, ClearSpace space, Standoff method) {
    Table table = table();
    double limitC = limit(field).si();
    double leastM = leastM(method, field);
    return new HeatGap(
        subject,
        AirGaps.at(field),
        space.unit(),
        Map.of("hottestC", Units.CELSIUS, "reachedC", Units.CELSIUS),
        field.name(),
        field.typeName(),
        limitC,
        method.temperatureAt(decayM(), space.m(), table.source(), Work.unread()).si(),
        space.m(),
        leastM,
        Math.max(leastM, Snap.m(weathering.limit("airflow-gap-least").si())),
        Optional.of((Chain) () -> sections(method, limitC)));
  }

  private Table table() {
    return weathering.thermal("standoff");
  }

  private double decayM() {
    return table().rows().get(0).number("decay");
  }

  private double leastM(Standoff method, FieldLayout field) {
    double gapM =
        method
            .show(decayM(), limit(field).si(), table().source(), Work.unread())
            .result()
            .map(Term::si)
            .orElseThrow();
    return Math.rint(gapM * STEPS_PER_METRE) / STEPS_PER_METRE;
  }

  private List<Section> sections(Standoff method, double limitC) {
    Work work = new Work(Measure.METRIC);
    method.show(decayM(), limitC, table().source(), work);
    return List.of(new Section("Gap for heat", work.measure(), work.lines(), true));
  }
}
