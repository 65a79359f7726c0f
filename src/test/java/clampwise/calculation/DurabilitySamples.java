package clampwise.calculation;

import java.util.List;

/** Samples of metals and of the temperature of modules. */
final class DurabilitySamples {

  static final List<String> ALL =
      List.of(
          "metal-couple: one=copper; other=zinc; one-area=2m²; other-area=0.1m²",
          "metal-couple: one=zinc; other=stainless-steel; exposure=normal",
          "coating-life: class=C3; years=25; zinc-mass=275",
          "coating-life: metal=steel; class=C4; years=12; later=power",
          "coating-life: rate=3um; years=40; coating=1.2mil",
          "module-temperature: insulated=82.574C; open=53.716C; gap=85mm",
          "module-temperature: insulated=180F; open=130F; gap=2in",
          "standoff-gap: insulated=95C; open=72C; level=level-1");

  private DurabilitySamples() {}
}
