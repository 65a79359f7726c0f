package clampwise.calc.statics;

/** A load on a beam, positive toward the supports; places are measured along the beam. */
public sealed interface BeamLoad {

  /** An even load from one place to another [m], per length [N/m]. */
  record Even(double fromM, double toM, double loadNPerM) implements BeamLoad {}

  /** A force [N] at a place [m]. */
  record Point(double atM, double forceN) implements BeamLoad {}

  /** First place that it touches [m]. */
  default double startM() {
    return this instanceof Even even ? even.fromM : ((Point) this).atM;
  }

  /** Last place that it touches [m]. */
  default double endM() {
    return this instanceof Even even ? even.toM : ((Point) this).atM;
  }

  /** The whole load [N]. */
  default double totalN() {
    return this instanceof Even even
        ? even.loadNPerM * (even.toM - even.fromM)
        : ((Point) this).forceN;
  }
}
