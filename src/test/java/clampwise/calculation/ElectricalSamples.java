package clampwise.calculation;

import java.util.List;

/** Samples of strings, grounding conductors and cables whose inputs hang together. */
final class ElectricalSamples {

  static final List<String> ALL =
      List.of(
          "cold-string-voltage: voc=49.5 V; coefficient=-0.27 %/°C; lowest=-10 °C; modules=12;"
              + " limit=600 V",
          "cold-string-voltage: voc=40 V; lowest=-15 °F; modules=10",
          "grounding-conductor: device=40 A; metal=aluminium; route=exposed",
          "grounding-conductor: short-circuit-current=13.9 A",
          "grounding-conductor: device=60 A; needed=6 AWG; chosen=4 AWG",
          "grounding-conductor: device=60 A; needed=16 mm²; chosen=25 mm²; route=exposed",
          "conductor-resistance: size=6 AWG; length=100 ft",
          "cable-clips: length=41.3 m; spacing=24 in");

  private ElectricalSamples() {}
}
