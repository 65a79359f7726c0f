package clampwise.calculation;

import java.util.List;

/** Samples of setting out whose inputs hang together. */
final class AccuracySamples {

  static final List<String> ALL =
      List.of(
          "tolerance-stack: tolerance=2 mm; modules=20; slack=8 mm",
          "tolerance-stack: tolerance=1/8 in; modules=12; slack=1 in",
          "square-corner: along=9 m; up=12 m; measured=15.01 m",
          "square-corner: along=30 ft; up=40 ft; measured=49 ft 11 in");

  private AccuracySamples() {}
}
