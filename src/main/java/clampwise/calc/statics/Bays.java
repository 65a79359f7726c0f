package clampwise.calc.statics;

import java.util.Arrays;
import java.util.List;

/** The bays of a loaded beam: bay 0 left of the first support, the last one right of the last. */
final class Bays {

  private final double[] supportsM;
  private final Bay[] bays;

  Bays(Beam beam, List<BeamLoad> loads) {
    this.supportsM = beam.supportsM();
    this.bays = new Bay[supportsM.length + 1];
    for (int i = 0; i < bays.length; i++) {
      double from = i == 0 ? beam.fromM() : supportsM[i - 1];
      double to = i == supportsM.length ? beam.toM() : supportsM[i];
      bays[i] = new Bay(from, to);
    }
    loads.forEach(this::add);
  }

  private void add(BeamLoad load) {
    for (int i = bayOf(load.startM()); i < bays.length; i++) {
      bays[i].add(load);
      if (i == supportsM.length || load.endM() <= supportsM[i]) {
        return;
      }
    }
  }

  /** The bay that holds a place; a support belongs to the bay on its right. */
  private int bayOf(double m) {
    int found = Arrays.binarySearch(supportsM, m);
    return found >= 0 ? found + 1 : -found - 1;
  }

  /** A bay by its number. */
  Bay bay(int i) {
    return bays[i];
  }

  private int last() {
    return supportsM.length - 1;
  }

  BeamForces forces() {
    double[] momentsNm = supportMomentsNm();
    return new BeamForces(reactionsN(momentsNm), momentsNm, spanMomentsNm(momentsNm));
  }

  private double[] supportMomentsNm() {
    double[] momentsNm = new double[supportsM.length];
    momentsNm[0] = 0 - bays[0].aboutRightNm();
    momentsNm[last()] = 0 - bays[supportsM.length].aboutLeftNm();
    if (supportsM.length > 2) {
      double[] turns = turns(momentsNm[0], momentsNm[last()]);
      for (int i = 1; i < last(); i++) {
        double lengthM = bays[i].lengthM();
        momentsNm[i] = (2 * turns[i - 1] + 4 * turns[i]) / lengthM - bays[i].heldRightNm();
      }
    }
    return momentsNm;
  }

  /** Turns over the supports times EI, from the equilibrium of moments at each support. */
  private double[] turns(double firstNm, double lastNm) {
    ThreeDiagonals matrix = new ThreeDiagonals(supportsM.length);
    matrix.addRight(0, -firstNm);
    matrix.addRight(last(), lastNm);
    for (int i = 0; i < last(); i++) {
      Bay span = bays[i + 1];
      double stiffness = 2 / span.lengthM();
      matrix.addDiagonal(i, 2 * stiffness);
      matrix.addDiagonal(i + 1, 2 * stiffness);
      matrix.addBeside(i, stiffness);
      matrix.addRight(i, -span.heldLeftNm());
      matrix.addRight(i + 1, span.heldRightNm());
    }
    return matrix.solve();
  }

  private double[] reactionsN(double[] momentsNm) {
    double[] reactionsN = new double[supportsM.length];
    reactionsN[0] = bays[0].totalN();
    reactionsN[last()] = bays[supportsM.length].totalN();
    for (int i = 0; i < last(); i++) {
      Bay span = bays[i + 1];
      double coupleN = (momentsNm[i + 1] - momentsNm[i]) / span.lengthM();
      reactionsN[i] += span.simpleLeftN() + coupleN;
      reactionsN[i + 1] += span.simpleRightN() - coupleN;
    }
    return reactionsN;
  }

  private double[] spanMomentsNm(double[] momentsNm) {
    double[] greatestNm = new double[last()];
    for (int i = 0; i < last(); i++) {
      greatestNm[i] = bays[i + 1].greatestMomentNm(momentsNm[i], momentsNm[i + 1]);
    }
    return greatestNm;
  }
}
