package clampwise.calc.statics;

/** A symmetric system of linear equations whose matrix has three diagonals. */
final class ThreeDiagonals {

  private final double[] diagonal;
  private final double[] beside;
  private final double[] right;

  ThreeDiagonals(int size) {
    diagonal = new double[size];
    beside = new double[size];
    right = new double[size];
  }

  void addDiagonal(int i, double value) {
    diagonal[i] += value;
  }

  /** Adds to the cells (i, i + 1) and (i + 1, i). */
  void addBeside(int i, double value) {
    beside[i] += value;
  }

  void addRight(int i, double value) {
    right[i] += value;
  }

  /** The solution, by elimination downward and substitution upward. */
  double[] solve() {
    int size = right.length;
    for (int i = 1; i < size; i++) {
      double share = beside[i - 1] / diagonal[i - 1];
      diagonal[i] -= share * beside[i - 1];
      right[i] -= share * right[i - 1];
    }
    for (int i = size - 1; i >= 0; i--) {
      double above = i + 1 < size ? beside[i] * right[i + 1] : 0;
      right[i] = (right[i] - above) / diagonal[i];
    }
    return right;
  }
}
