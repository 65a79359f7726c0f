package clampwise.calc.wind;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import java.util.List;

/** The exposure coefficient by its table, with straight lines between the rows. */
final class ExposureTable {

  private static final double LENGTH_NOISE_M = 1e-9;

  private ExposureTable() {}

  static Outcome<Line> line(WindCode code, Exposure exposure, double zM) {
    Table table = code.editionTable("exposure-coefficients");
    List<Table.Row> rows = table.rows();
    for (int i = 0; i < rows.size(); i++) {
      double heightM = rows.get(i).number("height");
      if (Math.abs(zM - heightM) < LENGTH_NOISE_M) {
        Term read = ExposureCoefficient.result(rows.get(i).number(exposure.name()));
        return new Result<>(Line.given(read, code.cite(table), ""));
      }
      if (zM < heightM) {
        return new Result<>(between(code, exposure, zM, rows.subList(i - 1, i + 1)));
      }
    }
    return new NotApplicable<>("the table of exposure coefficients ends at 500 ft");
  }

  private static Line between(WindCode code, Exposure exposure, double zM, List<Table.Row> pair) {
    Term z = Term.length("z", "height used", zM);
    Term z1 = Term.length("z_1", "height of the row below", pair.get(0).number("height"));
    Term z2 = Term.length("z_2", "height of the row above", pair.get(1).number("height"));
    Term k1 = Term.number("K_1", "coefficient below", pair.get(0).number(exposure.name()));
    Term k2 = Term.number("K_2", "coefficient above", pair.get(1).number(exposure.name()));
    double share = (zM - z1.si()) / (z2.si() - z1.si());
    return new Line(
        ExposureCoefficient.result(k1.si() + (k2.si() - k1.si()) * share),
        "K_1 + (K_2 - K_1) * (z - z_1) / (z_2 - z_1)",
        List.of(k1, k2, z, z1, z2),
        code.cite(code.editionTable("exposure-coefficients")),
        "");
  }
}
