package clampwise.calculation;

import java.util.List;

/** Cases of metals beside each other and in the weather, and of the temperature of modules. */
final class DurabilityCases {

  private static final String TABLE = "anodic index, handbook table 2.4 ";
  private static final String POWER = "| coating-life later=power years=25 ";

  static final List<String> ALL =
      List.of(
          TABLE + "[computed]| metal-couple one=aluminium other=stainless-steel | dV | 0.40 V",
          TABLE + "[computed]| metal-couple one=aluminium other=galvanised-steel | dV | 0.30 V",
          TABLE
              + "[computed]| metal-couple one=galvanised-steel other=stainless-steel | dV | 0.70 V",
          TABLE + "[computed]| metal-couple one=aluminium other=copper | dV | 0.55 V",
          TABLE + "[computed]| metal-couple one=al-zn-steel other=copper | dV | 0.85 V",
          TABLE + "[computed]| metal-couple one=zinc other=copper | dV | 0.90 V",
          TABLE + "[computed]| metal-couple one=lead other=aluminium | dV | 0.20 V",
          TABLE + "[computed]| metal-couple one=tinned-copper other=aluminium | dV | 0.25 V",
          "normal exposure, handbook table 2.4 [read]"
              + "| metal-couple one=tinned-copper other=aluminium exposure=normal | U | 1.00",
          "zinc in C3, 25 years [computed]" + POWER + "rate=1.5um | D | 20.5 µm",
          "zinc in C3, 25 years, by its class [computed]" + POWER + "class=C3 | D | 20.5 µm",
          "zinc in C4, 25 years [computed]" + POWER + "rate=3.0um | D | 41.1 µm",
          "zinc in C5, 25 years [computed]" + POWER + "rate=6.0um | D | 82.2 µm",
          "G90, 275 g/m² [computed]" + POWER + "zinc-mass=275 | c | 19.3 µm",
          "gap for 70 °C, turned round [computed]"
              + "| module-temperature insulated=82.574C open=53.716C gap=3.49cm | T | 70.0 °C");

  private DurabilityCases() {}
}
