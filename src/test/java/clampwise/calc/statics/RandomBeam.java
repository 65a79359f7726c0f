package clampwise.calc.statics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** A beam with unequal spans, overhangs and overlapping loads in both directions. */
final class RandomBeam {

  private final Beam beam;
  private final List<BeamLoad> loads;

  private RandomBeam(Beam beam, List<BeamLoad> loads) {
    this.beam = beam;
    this.loads = loads;
  }

  RandomBeam(int supports, long seed) {
    Random random = new Random(seed);
    double[] places = new double[supports];
    places[0] = random.nextDouble();
    for (int i = 1; i < supports; i++) {
      places[i] = places[i - 1] + 0.3 + random.nextDouble();
    }
    this.beam = new Beam(0, places[supports - 1] + random.nextDouble(), places);
    this.loads = new ArrayList<>();
    for (int i = 0; i < 2 * supports; i++) {
      double a = random.nextDouble() * beam.toM();
      double b = random.nextDouble() * beam.toM();
      double size = 100 * random.nextGaussian();
      loads.add(
          i % 2 == 0
              ? new BeamLoad.Point(a, size)
              : new BeamLoad.Even(Math.min(a, b), Math.max(a, b), size));
    }
  }

  Beam beam() {
    return beam;
  }

  List<BeamLoad> loads() {
    return loads;
  }

  double totalN() {
    return loads.stream().mapToDouble(BeamLoad::totalN).sum();
  }

  double momentNm() {
    return loads.stream().mapToDouble(l -> l.totalN() * (l.startM() + l.endM()) / 2).sum();
  }

  RandomBeam seenFromTheOtherEnd() {
    double[] places = Arrays.stream(beam.supportsM()).map(m -> -m).toArray();
    Beam turned = new Beam(-beam.toM(), -beam.fromM(), reversed(places));
    return new RandomBeam(turned, loads.stream().map(RandomBeam::turned).toList());
  }

  private static BeamLoad turned(BeamLoad load) {
    return load instanceof BeamLoad.Even even
        ? new BeamLoad.Even(-even.toM(), -even.fromM(), even.loadNPerM())
        : new BeamLoad.Point(-load.startM(), load.totalN());
  }

  static double[] reversed(double[] values) {
    double[] reversed = new double[values.length];
    Arrays.setAll(reversed, i -> values[values.length - 1 - i]);
    return reversed;
  }
}
