package clampwise.calc.wind;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import java.util.List;

/** The exposure coefficient by its formula. */
final class ExposureFormula {

  private static final double LENGTH_NOISE_M = 1e-9;

  private ExposureFormula() {}

  static Table.Row terrain(WindCode code, Exposure exposure) {
    return code.editionTable("exposure-terrain").row("exposure", exposure.name()).orElseThrow();
  }

  static Outcome<Line> line(WindCode code, Exposure exposure, double zM) {
    Table.Row terrain = terrain(code, exposure);
    if (zM > terrain.number("greatest-height") + LENGTH_NOISE_M) {
      return new NotApplicable<>(
          "the formula of the exposure coefficient does not reach this high in exposure "
              + exposure);
    }
    return new Result<>(line(code, terrain, zM));
  }

  private static Line line(WindCode code, Table.Row terrain, double zM) {
    double gradientM = terrain.number("gradient-height");
    Term c = Term.number("c", "coefficient of the formula", terrain.number("coefficient"));
    Term z = Term.length("z", "height used", Math.min(zM, gradientM));
    Term zg = Term.length("z_g", "gradient height", gradientM);
    Term alpha = Term.number("alpha", "exponent of the terrain", terrain.number("alpha"));
    double k = c.si() * Math.pow(z.si() / gradientM, 2 / alpha.si());
    return new Line(
        ExposureCoefficient.result(k),
        "c * (z / z_g)^(2 / alpha)",
        List.of(c, z, zg, alpha),
        code.cite(code.editionTable("exposure-terrain")),
        "");
  }
}
