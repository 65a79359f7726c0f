package clampwise.calculation;

import static clampwise.units.Dimension.AREA;
import static clampwise.units.Dimension.COATING;
import static clampwise.units.Dimension.LENGTH;
import static clampwise.units.Dimension.NUMBER;
import static clampwise.units.Dimension.TEMPERATURE;

import clampwise.calc.Outcome;
import clampwise.calc.corrosion.CorrosionLoss;
import clampwise.calc.corrosion.CorrosionLoss.Later;
import clampwise.calc.corrosion.Couple;
import clampwise.calc.corrosion.FirstYear;
import clampwise.calc.corrosion.ZincCoating;
import clampwise.calc.thermal.Standoff;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.catalogue.LimitsReader;
import clampwise.catalogue.Tables;
import clampwise.catalogue.TablesReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Metals beside each other and in the weather, and the temperature of modules. */
final class DurabilityCalculations {

  private final Tables metals;
  private final Tables thermal;
  private final Limits limits;

  private DurabilityCalculations(Tables metals, Tables thermal, Limits limits) {
    this.metals = metals;
    this.thermal = thermal;
    this.limits = limits;
  }

  static List<Calculation> all() {
    DurabilityCalculations all =
        new DurabilityCalculations(
            TablesReader.read("metals.yaml"),
            TablesReader.read("thermal.yaml"),
            LimitsReader.read());
    return List.of(all.couple(), all.loss(), all.temperature());
  }

  private Calculation couple() {
    Table index = metals.get("anodic-index");
    return new Calculation(
        "metal-couple",
        "Difference of potential of two metals that touch, against what is allowed",
        index.source().validity() + "; a screening only",
        List.of(
            Input.word("one", "metal", words(index, "metal")),
            Input.word("other", "metal", words(index, "metal")),
            Input.word("exposure", "where they are", words(exposures(), "exposure"))
                .unless("harsh"),
            Input.of("one-area", "bare area of the one", AREA, 1e-6).orNothing(),
            Input.of("other-area", "bare area of the other", AREA, 1e-6).orNothing()),
        this::couple);
  }

  private Table exposures() {
    return metals.get("couple-exposures");
  }

  private Outcome<List<Term>> couple(Given given, Work work) {
    Table index = metals.get("anodic-index");
    Couple couple = new Couple(volts(index, given.word("one")), volts(index, given.word("other")));
    Term difference = couple.show(index.source(), work);
    Table.Row row = exposures().row("exposure", given.word("exposure")).orElseThrow();
    Term allowed = Couple.volts("dV_a", "difference allowed", row.number("most"));
    List<Term> results = new ArrayList<>(List.of(difference));
    results.add(Couple.share(difference, allowed, exposures().source(), work));
    ratio(couple, given, work).ifPresent(results::add);
    return new Outcome.Result<>(results);
  }

  private static Optional<Term> ratio(Couple couple, Given given, Work work) {
    Optional<Double> one = given.find("one-area");
    Optional<Double> other = given.find("other-area");
    if (one.isEmpty() || other.isEmpty()) {
      return Optional.empty();
    }
    Optional<Double> noble = couple.isFirstNobler() ? one : other;
    Optional<Double> active = couple.isFirstNobler() ? other : one;
    return Optional.of(Couple.areaRatio(noble.get(), active.get(), work));
  }

  private static double volts(Table index, String metal) {
    return index.row("metal", metal).orElseThrow().number("index");
  }

  private Calculation loss() {
    Table rates = metals.get("corrosivity");
    return new Calculation(
        "coating-life",
        "Metal that the weather takes off a surface over the years, and the life of a coating",
        rates.source().validity(),
        List.of(
            Input.word("metal", "metal", words(exponents(), "metal")).unless("zinc"),
            Input.word(
                    "class",
                    "class of the air, at its middle; zinc in C3 at 1.5 µm",
                    words(rates, "class"))
                .unless("C3"),
            Input.of("rate", "loss of the first year, instead of the class", COATING, 1e-9)
                .orNothing(),
            Input.of("years", "time", NUMBER, 0.1, 200.0),
            Input.of("coating", "thickness of the coating on this side", COATING, 1e-7).orNothing(),
            Input.of("zinc-mass", "zinc on both sides, g/m², instead of the thickness", NUMBER, 1.0)
                .orNothing(),
            Input.word("later", "how loss goes on after the table's years", "steady", "power")
                .unless("steady")),
        this::loss);
  }

  private Table exponents() {
    return metals.get("corrosion-exponents");
  }

  private Outcome<List<Term>> loss(Given given, Work work) {
    CorrosionLoss loss = lossOf(given);
    Later later = Words.choice(Later.class, given.word("later"));
    Term lost = loss.show(given.number("years"), later, work);
    List<Term> results = new ArrayList<>(List.of(lost));
    coating(given, work)
        .ifPresent(
            coating -> {
              Term share = Term.number("U", "share of the coating", lost.si() / coating.si());
              work.write(share, "D/c", Source.STATICS, lost, coating);
              results.add(share);
              results.add(
                  Term.number("t_c", "years until it is gone", loss.years(coating.si(), later)));
            });
    return new Outcome.Result<>(results);
  }

  private CorrosionLoss lossOf(Given given) {
    String metal = given.word("metal");
    Table.Row law = exponents().row("metal", metal).orElseThrow();
    double rateM = given.find("rate").orElseGet(() -> firstYearM(metal, given.word("class")));
    Source source = exponents().source();
    return new CorrosionLoss(rateM, law.number("exponent"), law.number("years"), source);
  }

  private double firstYearM(String metal, String airClass) {
    return new FirstYear(metals.get("corrosivity"), metals.get("first-year-losses"))
        .lossM(metal, airClass);
  }

  private Optional<Term> coating(Given given, Work work) {
    Limit density = limits.get("zinc-density");
    return given
        .find("coating")
        .map(m -> CorrosionLoss.coating("c", "coating on this side", m))
        .or(
            () ->
                given
                    .find("zinc-mass")
                    .map(g -> new ZincCoating(g).show(density.si(), density.source(), work)));
  }

  private Calculation temperature() {
    Table table = thermal.get("standoff");
    return new Calculation(
        "module-temperature",
        "98th percentile of a module's temperature at a gap above the roof",
        table.source().validity(),
        List.of(
            Input.of("insulated", "98th percentile, insulated back", TEMPERATURE, -90.0, 150.0),
            Input.of("open", "98th percentile, open rack", TEMPERATURE, -90.0, 150.0),
            Input.of("gap", "gap between module and roof", LENGTH, 0.0)),
        (given, work) ->
            Results.of(
                new Standoff(given.number("insulated"), given.number("open"))
                    .temperatureAt(
                        table.rows().get(0).number("decay"),
                        given.number("gap"),
                        table.source(),
                        work)));
  }

  private static String[] words(Table table, String column) {
    return table.rows().stream().map(row -> row.word(column)).toArray(String[]::new);
  }
}
