package clampwise.calc.wind;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.ZoneWidth.Roof;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import java.util.List;
import java.util.Optional;

/**
 * Two figures between which a roof lies, with the variable that runs between them.
 *
 * @param run the variable at the roof, at the low and at the high figure; empty for one figure
 *     alone
 */
record Blend(String low, String high, List<Term> run, Source source) {

  static Blend alone(String figure) {
    return new Blend(figure, figure, List.of(), Source.STATICS);
  }

  /** The figures that a roof of this figure takes its coefficients from. */
  static Outcome<Blend> of(WindCode code, String figure, Roof roof) {
    Table table = code.editionTable("figure-blends");
    Optional<Table.Row> row = table.row("figure", figure);
    if (row.isEmpty()) {
      return new Result<>(alone(figure));
    }
    return run(row.get(), roof)
        .then(
            run -> {
              Table.Row found = row.get();
              Blend blend = new Blend(found.word("low"), found.word("high"), run, code.cite(table));
              return new Result<>(blend.ended());
            });
  }

  /** Between 0 at the low and 1 at the high figure. */
  double share() {
    double from = run.get(1).si();
    return (run.get(0).si() - from) / (run.get(2).si() - from);
  }

  boolean isAlone() {
    return run.isEmpty();
  }

  private Blend ended() {
    if (share() <= 0) {
      return alone(low);
    }
    return share() >= 1 ? alone(high) : this;
  }

  private static Outcome<List<Term>> run(Table.Row row, Roof roof) {
    double from = row.number("from");
    double to = row.number("to");
    if (row.word("by").equals("slope")) {
      return new Result<>(
          List.of(
              Term.angle("x", "slope", roof.slopeRad()),
              Term.angle("x_1", "slope of the first figure", Math.toRadians(from)),
              Term.angle("x_2", "slope of the second figure", Math.toRadians(to))));
    }
    if (!(roof.leastPlanM() > 0)) {
      return new NotApplicable<>("the plan size of the building is not given");
    }
    return new Result<>(
        List.of(
            Term.number("x", "height over least plan size", roof.heightM() / roof.leastPlanM()),
            Term.number("x_1", "height over width of the first figure", from),
            Term.number("x_2", "height over width of the second figure", to)));
  }
}
