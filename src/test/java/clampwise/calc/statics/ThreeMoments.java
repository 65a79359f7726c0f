package clampwise.calc.statics;

import java.util.List;
import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;

/**
 * The three-moment equations of a continuous beam (Clapeyron), solved densely by a general library:
 * nothing in common with the banded stiffness method but the beam.
 */
final class ThreeMoments {

  private final double[] supportsM;
  private final List<BeamLoad> loads;

  ThreeMoments(Beam beam, List<BeamLoad> loads) {
    this.supportsM = beam.supportsM();
    this.loads = loads;
  }

  /** Moments over the supports, hogging negative. */
  double[] supportMomentsNm() {
    int n = supportsM.length;
    Array2DRowRealMatrix matrix = new Array2DRowRealMatrix(n, n);
    ArrayRealVector right = new ArrayRealVector(n);
    matrix.setEntry(0, 0, 1);
    matrix.setEntry(n - 1, n - 1, 1);
    right.setEntry(0, overhangNm(Double.NEGATIVE_INFINITY, supportsM[0], supportsM[0]));
    right.setEntry(n - 1, overhangNm(supportsM[n - 1], 1e9, supportsM[n - 1]));
    for (int i = 1; i < n - 1; i++) {
      double before = supportsM[i] - supportsM[i - 1];
      double after = supportsM[i + 1] - supportsM[i];
      matrix.setEntry(i, i - 1, before);
      matrix.setEntry(i, i, 2 * (before + after));
      matrix.setEntry(i, i + 1, after);
      right.setEntry(i, -term(i - 1, false) - term(i, true));
    }
    return new LUDecomposition(matrix).getSolver().solve(right).toArray();
  }

  private double overhangNm(double from, double to, double support) {
    double sum = 0;
    for (BeamLoad load : loads) {
      if (load instanceof BeamLoad.Even even) {
        double a = Math.max(from, even.fromM());
        double b = Math.min(to, even.toM());
        sum -= b > a ? even.loadNPerM() * (b - a) * Math.abs((a + b) / 2 - support) : 0;
      } else if (load.startM() > from && load.startM() < to) {
        sum -= load.totalN() * Math.abs(load.startM() - support);
      }
    }
    return sum;
  }

  /** Load term of a span: for a force P at x from the far support, P x (L² - x²) / L. */
  private double term(int span, boolean fromRight) {
    double left = supportsM[span];
    double right = supportsM[span + 1];
    double length = right - left;
    double sum = 0;
    for (BeamLoad load : loads) {
      double a = Math.max(load.startM(), left);
      double b = Math.min(load.endM(), right);
      if (load instanceof BeamLoad.Point && a == b) {
        double x = fromRight ? right - a : a - left;
        sum += load.totalN() * x * (length * length - x * x) / length;
      } else if (load instanceof BeamLoad.Even even && b > a) {
        double from = fromRight ? right - b : a - left;
        double to = fromRight ? right - a : b - left;
        sum +=
            even.loadNPerM()
                * new SimpsonIntegrator(1e-12, 1e-13, 3, 30)
                    .integrate(100_000, x -> x * (length * length - x * x) / length, from, to);
      }
    }
    return sum;
  }
}
