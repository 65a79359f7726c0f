package clampwise.calc.statics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Walks along the loads of a bay and keeps the greatest bending moment. */
final class MomentWalk {

  /** At a place the even load changes by so much and a force stands. */
  private record Step(double atM, double changeNPerM, double forceN) {}

  private final List<Step> steps = new ArrayList<>();

  MomentWalk(List<BeamLoad> loads) {
    for (BeamLoad load : loads) {
      if (load instanceof BeamLoad.Even even) {
        steps.add(new Step(even.fromM(), even.loadNPerM(), 0));
        steps.add(new Step(even.toM(), -even.loadNPerM(), 0));
      } else {
        steps.add(new Step(load.startM(), 0, load.totalN()));
      }
    }
    steps.sort(Comparator.comparingDouble(Step::atM));
  }

  /** Greatest moment from the left end, with its moment and shear, to the last load [N m]. */
  double greatestNm(double leftNm, double leftN) {
    double greatest = leftNm;
    double momentNm = leftNm;
    double shearN = leftN;
    double loadNPerM = 0;
    double atM = 0;
    for (Step step : steps) {
      double lengthM = step.atM - atM;
      double crestM = loadNPerM > 0 ? shearN / loadNPerM : 0;
      if (crestM > 0 && crestM < lengthM) {
        greatest = Math.max(greatest, momentNm + shearN * crestM / 2);
      }
      momentNm += (shearN - loadNPerM * lengthM / 2) * lengthM;
      greatest = Math.max(greatest, momentNm);
      shearN -= loadNPerM * lengthM + step.forceN;
      loadNPerM += step.changeNPerM;
      atM = step.atM;
    }
    return greatest;
  }
}
