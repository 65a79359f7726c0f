package clampwise.calculation;

import static clampwise.units.Dimension.LENGTH;
import static clampwise.units.Dimension.NUMBER;
import static clampwise.units.Dimension.TEMPERATURE;

import clampwise.calc.Outcome;
import clampwise.calc.thermal.Expansion;
import clampwise.calc.thermal.Metal;
import clampwise.calc.thermal.Movement;
import clampwise.calc.thermal.Standoff;
import clampwise.calc.thermal.Swing;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.catalogue.Tables;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Movement by temperature, and the gap that keeps modules cool. */
final class ThermalCalculations {

  private static final double COLDEST_C = -90;
  private static final double HOTTEST_C = 150;

  private final Metals metals;
  private final Tables tables;
  private final Limits limits;

  ThermalCalculations(Tables tables, Limits limits) {
    this.metals = new Metals(tables.get("expansion"));
    this.tables = tables;
    this.limits = limits;
  }

  List<Calculation> all() {
    return List.of(expansion(), differential(), jumperSlack(), standoffGap());
  }

  private Calculation expansion() {
    return new Calculation(
        "expansion",
        "Growth of a length of metal between two temperatures",
        metals.validity(),
        List.of(
            metals.input("metal"),
            Input.of("length", "length between fixed point and free end", LENGTH, 0.0),
            coldest(),
            hottest(),
            coefficient("coefficient"),
            Input.of("travel", "free travel, such as that of a sliding clip", LENGTH, 1e-6)
                .orNothing()),
        (given, work) -> {
          Metal metal = metals.most(given.word("metal"), given.find("coefficient"));
          return swing(given)
              .then(
                  swing -> {
                    Term growth = new Expansion(given.number("length"), swing).show(metal, work);
                    return withTravel(List.of(growth), growth, given.find("travel"), work);
                  });
        });
  }

  private Calculation differential() {
    return new Calculation(
        "differential-expansion",
        "Difference of growth of an array and its roof, and the share of each joint",
        metals.validity() + "; both metals at the same temperatures; joints that share evenly",
        List.of(
            metals.input("array").unless("aluminium"),
            metals.input("roof").unless("steel"),
            Input.of("length", "length of the coupled run", LENGTH, 0.0),
            coldest(),
            hottest(),
            coefficient("array-coefficient"),
            coefficient("roof-coefficient"),
            Input.of("joints", "joints of the run", NUMBER, 1.0, 10_000.0).unless("1"),
            Input.of("slack", "free travel of a joint", LENGTH, 1e-6).orNothing()),
        this::differential);
  }

  private Outcome<List<Term>> differential(Given given, Work work) {
    Metals.Pair pair =
        metals.furthest(
            new Metals.Choice(given.word("array"), given.find("array-coefficient")),
            new Metals.Choice(given.word("roof"), given.find("roof-coefficient")));
    return swing(given)
        .then(
            swing -> {
              Expansion run = new Expansion(given.number("length"), swing);
              Term whole = run.show(pair.one(), pair.other(), work);
              Term each = Movement.perJoint(whole, (int) Math.round(given.number("joints")), work);
              return withTravel(List.of(whole, each), each, given.find("slack"), work);
            });
  }

  private static Outcome<List<Term>> withTravel(
      List<Term> results, Term movement, Optional<Double> freeM, Work work) {
    List<Term> all = new ArrayList<>(results);
    freeM
        .map(m -> Term.length("t", "free travel", m))
        .ifPresent(free -> all.add(Movement.share(movement, free, work)));
    return new Outcome.Result<>(all);
  }

  private Calculation jumperSlack() {
    Limit factor = limits.get("jumper-slack-factor");
    return new Calculation(
        "jumper-slack",
        "Slack of a jumper or conduit loop over a break",
        factor.validity(),
        List.of(
            Input.of("movement", "expected movement at the break", LENGTH, 0.0),
            Input.of("factor", "slack over movement", NUMBER, 1.0, 10.0)
                .unless(Plain.number(factor.si()))),
        (given, work) -> {
          Term movement = Term.length("dL", "expected movement", given.number("movement"));
          Term multiple = Term.number("c", "slack over movement", given.number("factor"));
          return new Outcome.Result<>(
              List.of(Movement.slack(movement, multiple, factor.source(), work)));
        });
  }

  private Calculation standoffGap() {
    Table table = tables.get("standoff");
    Table levels = tables.get("temperature-levels");
    return new Calculation(
        "standoff-gap",
        "Least distance of a module from the roof that keeps it cool enough",
        table.source().validity(),
        List.of(
            temperature("insulated", "98th percentile of the module, insulated back"),
            temperature("open", "98th percentile of the module, open rack"),
            Input.word("level", "listing of the module for heat", words(levels, "level"))
                .unless("standard")),
        (given, work) ->
            new Standoff(given.number("insulated"), given.number("open"))
                .show(
                    table.rows().get(0).number("decay"),
                    levels.row("level", given.word("level")).orElseThrow().number("limit"),
                    table.source(),
                    work)
                .then(gap -> new Outcome.Result<>(List.of(gap))));
  }

  private static String[] words(Table table, String column) {
    return table.rows().stream().map(row -> row.word(column)).toArray(String[]::new);
  }

  private static Outcome<Swing> swing(Given given) {
    Swing swing = new Swing(given.number("coldest"), given.number("hottest"));
    return swing.differenceK() < 0
        ? new Outcome.NotApplicable<>("the hottest temperature is below the coldest")
        : new Outcome.Result<>(swing);
  }

  private static Input coldest() {
    return temperature("coldest", "coldest temperature of the metal");
  }

  private static Input hottest() {
    return temperature("hottest", "hottest temperature of the metal");
  }

  private static Input temperature(String name, String meaning) {
    return Input.of(name, meaning, TEMPERATURE, COLDEST_C, HOTTEST_C);
  }

  private static Input coefficient(String name) {
    return Input.of(name, "millionths per °C, instead of the table's", NUMBER, 0.1, 100.0)
        .orNothing();
  }
}
