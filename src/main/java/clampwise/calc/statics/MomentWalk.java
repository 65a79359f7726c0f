package clampwise.calc.statics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Walks along the loads of a bay and keeps the greatest bending moment and its place. */
final class MomentWalk {

  /** At a place the even load changes by so much and a force stands. */
  private record Step(double atM, double changeNPerM, double forceN) {}

  private final List<Step> steps = new ArrayList<>();
  private double greatestNm;
  private double placeM;

  /**
   * Walks from the left end to the last load.
   *
   * @param leftNm moment at the left end [N m]
   * @param leftN shear at the left end [N]
   */
  MomentWalk(List<BeamLoad> loads, double leftNm, double leftN) {
    loads.forEach(this::add);
    steps.sort(Comparator.comparingDouble(Step::atM));
    greatestNm = leftNm;
    walk(leftNm, leftN);
  }

  private void add(BeamLoad load) {
    if (load instanceof BeamLoad.Even even) {
      steps.add(new Step(even.fromM(), even.loadNPerM(), 0));
      steps.add(new Step(even.toM(), -even.loadNPerM(), 0));
    } else {
      steps.add(new Step(load.startM(), 0, load.totalN()));
    }
  }

  private void walk(double leftNm, double leftN) {
    double momentNm = leftNm;
    double shearN = leftN;
    double loadNPerM = 0;
    double atM = 0;
    for (Step step : steps) {
      double lengthM = step.atM - atM;
      double crestM = loadNPerM > 0 ? shearN / loadNPerM : 0;
      if (crestM > 0 && crestM < lengthM) {
        keep(momentNm + shearN * crestM / 2, atM + crestM);
      }
      momentNm += (shearN - loadNPerM * lengthM / 2) * lengthM;
      keep(momentNm, step.atM);
      shearN -= loadNPerM * lengthM + step.forceN;
      loadNPerM += step.changeNPerM;
      atM = step.atM;
    }
  }

  private void keep(double momentNm, double atM) {
    if (momentNm > greatestNm) {
      greatestNm = momentNm;
      placeM = atM;
    }
  }

  /** The greatest moment [N m]. */
  double greatestNm() {
    return greatestNm;
  }

  /** Its place, from the left end [m]. */
  double placeM() {
    return placeM;
  }
}
