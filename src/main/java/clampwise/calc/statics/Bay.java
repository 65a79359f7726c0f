package clampwise.calc.statics;

import java.util.ArrayList;
import java.util.List;

/** A stretch of a beam between neighbouring supports, or past the last one, with its loads. */
final class Bay {

  private final double fromM;
  private final double lengthM;
  private final List<BeamLoad> loads = new ArrayList<>(1);

  Bay(double fromM, double toM) {
    this.fromM = fromM;
    this.lengthM = toM - fromM;
  }

  double lengthM() {
    return lengthM;
  }

  /** The loads, measured from the left end. */
  List<BeamLoad> loads() {
    return loads;
  }

  /** Adds what lies in this bay of a load measured along the whole beam. */
  void add(BeamLoad load) {
    if (load instanceof BeamLoad.Even even) {
      double start = Math.max(even.fromM() - fromM, 0);
      double end = Math.min(even.toM() - fromM, lengthM);
      if (end > start) {
        loads.add(new BeamLoad.Even(start, end, even.loadNPerM()));
      }
    } else {
      loads.add(new BeamLoad.Point(load.startM() - fromM, load.totalN()));
    }
  }

  double totalN() {
    return loads.stream().mapToDouble(BeamLoad::totalN).sum();
  }

  /** Moment of the loads about the left end [N m]. */
  double aboutLeftNm() {
    return loads.stream().mapToDouble(l -> l.totalN() * (l.startM() + l.endM()) / 2).sum();
  }

  /** Moment of the loads about the right end [N m]. */
  double aboutRightNm() {
    return totalN() * lengthM - aboutLeftNm();
  }

  /** Reaction at the left end if the bay were a beam on two supports [N]. */
  double simpleLeftN() {
    return aboutRightNm() / lengthM;
  }

  /** Reaction at the right end if the bay were a beam on two supports [N]. */
  double simpleRightN() {
    return aboutLeftNm() / lengthM;
  }

  /** Size of the moment at the left end if both ends were held against turning [N m]. */
  double heldLeftNm() {
    return loads.stream().mapToDouble(this::heldLeftNm).sum();
  }

  /** Size of the moment at the right end if both ends were held against turning [N m]. */
  double heldRightNm() {
    return loads.stream().mapToDouble(this::heldRightNm).sum();
  }

  /** A force P at x: P x (L - x)² / L²; an even load is that, summed over its length. */
  private double heldLeftNm(BeamLoad load) {
    if (load instanceof BeamLoad.Even even) {
      return even.loadNPerM() * (sumLeft(even.toM()) - sumLeft(even.fromM()));
    }
    double x = load.startM() / lengthM;
    return load.totalN() * lengthM * x * (1 - x) * (1 - x);
  }

  private double heldRightNm(BeamLoad load) {
    if (load instanceof BeamLoad.Even even) {
      return even.loadNPerM() * (sumRight(even.toM()) - sumRight(even.fromM()));
    }
    double x = load.startM() / lengthM;
    return load.totalN() * lengthM * x * x * (1 - x);
  }

  private double sumLeft(double m) {
    double x = m / lengthM;
    return lengthM * lengthM * x * x * (1.0 / 2 - x * (2.0 / 3 - x / 4));
  }

  private double sumRight(double m) {
    double x = m / lengthM;
    return lengthM * lengthM * x * x * x * (1.0 / 3 - x / 4);
  }

  /** The walk to the greatest bending moment between given moments at the ends [N m]. */
  MomentWalk walk(double leftNm, double rightNm) {
    return new MomentWalk(loads, leftNm, simpleLeftN() + (rightNm - leftNm) / lengthM);
  }

  /** Greatest bending moment between given moments at the ends [N m]. */
  double greatestMomentNm(double leftNm, double rightNm) {
    return Math.max(rightNm, walk(leftNm, rightNm).greatestNm());
  }
}
