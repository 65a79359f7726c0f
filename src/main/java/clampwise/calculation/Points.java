package clampwise.calculation;

import clampwise.calc.Outcome;
import clampwise.calc.statics.BeamLoad;
import java.util.ArrayList;
import java.util.List;

/** Forces at places, from two lists of a calculation's inputs. */
final class Points {

  private Points() {}

  /** Each force at its place; one force may stand for all places. */
  static Outcome<List<BeamLoad.Point>> of(Given given, String forces, String places) {
    double[] force = given.list(forces);
    double[] place = given.list(places);
    if (force.length != place.length && force.length != 1) {
      return new Outcome.NotApplicable<>(forces + " and " + places + " are not equally many");
    }
    List<BeamLoad.Point> points = new ArrayList<>();
    for (int i = 0; i < place.length; i++) {
      points.add(new BeamLoad.Point(place[i], force[Math.min(i, force.length - 1)]));
    }
    return new Outcome.Result<>(points);
  }
}
