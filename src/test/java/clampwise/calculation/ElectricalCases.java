package clampwise.calculation;

import java.util.List;

/** Cases of strings in the cold and of grounding conductors. */
final class ElectricalCases {

  private static final String MAKER =
      "| cold-string-voltage voc=49.5V coefficient=-0.27%/C lowest=-10C";

  static final List<String> ALL =
      List.of(
          "cold voltage by coefficient, -10 °C [2nd]" + MAKER + "| k_T | 1.0945",
          "cold voltage by coefficient, -10 °C [2nd]" + MAKER + "| V_m | 54.18 V",
          "modules below 600 V [2nd]" + MAKER + " limit=600V | n | 11.07",
          "modules below 600 V [2nd]" + MAKER + " limit=600V | N_max | 11",
          "eleven in series [2nd]" + MAKER + " modules=11 | V_s | 595.96 V",
          "twelve in series [computed]" + MAKER + " modules=12 | V_s | 650.13 V",
          "cold voltage by table, 40 V at -26 °C [computed]"
              + "| cold-string-voltage voc=40V lowest=-26C | V_m | 48.4 V",
          "cold voltage by table, 38.9 V twice at -20 °C [2nd]"
              + "| cold-string-voltage voc=38.9V lowest=-20C modules=2 | V_s | 91.8 V",
          "15 A string fuse, NEC table 250.122 [read]"
              + "| grounding-conductor device=15A | S | 2.08 mm²",
          "three strings behind 40 A, NEC table 250.122 [read]"
              + "| grounding-conductor device=40A | S | 5.26 mm²",
          "70 A, aluminium, NEC table 250.122 [read]"
              + "| grounding-conductor device=70A metal=aluminium | S | 13.3 mm²",
          "no fuse, Isc 13.9 A [computed]"
              + "| grounding-conductor short-circuit-current=13.9A | I_d | 21.7 A",
          "no fuse, Isc 13.9 A [computed]"
              + "| grounding-conductor short-circuit-current=13.9A | S | 5.26 mm²",
          "exposed on the roof, NEC 250.120(C) [memory]"
              + "| grounding-conductor device=15A route=exposed | S_c | 13.3 mm²",
          "100 ft of 6 AWG [computed]"
              + "| conductor-resistance size=6AWG length=100ft | R | 0.049 ohm");

  private ElectricalCases() {}
}
