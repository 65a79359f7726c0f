package clampwise.calculation;

import java.util.List;

/** Samples of the wind calculations: the branches that random inputs seldom reach. */
final class WindSamples {

  static final List<String> ALL =
      List.of(
          "velocity-pressure: edition=asce-7-16; wind-speed=115 mph; exposure=C; height=20 ft",
          "velocity-pressure: edition=asce-7-22; wind-speed=52 m/s; exposure=C; height=6.5 m;"
              + " ground-elevation=110 m; exposure-method=formula",
          "exposure-coefficient: edition=asce-7-22; exposure=B; height=20 ft; exposure-floor=yes",
          "exposure-coefficient: edition=asce-7-22; exposure=C; height=3000 ft;"
              + " exposure-method=formula",
          "external-coefficient: edition=asce-7-22; height=20 ft; roof=hip; slope=36 deg; zone=2;"
              + " area=32 ft²",
          "external-coefficient: edition=asce-7-16; height=20 ft; roof=hip; slope=15 deg; zone=2e;"
              + " area=32 ft²; least-width=32 ft",
          "external-coefficient: edition=asce-7-16; height=20 ft; roof=flat; slope=1 deg; zone=2;"
              + " area=32 ft²; parapet=3 ft; wall-reduction=yes",
          "wind-zone-widths: edition=asce-7-16; height=15 ft; roof=monoslope; slope=5 deg;"
              + " least-width=400 ft",
          "panel-wind-pressure: edition=asce-7-22; wind-speed=115 mph; exposure=C; height=20 ft;"
              + " roof=gable; slope=15 deg; zone=2; area=17.55 ft²; top-height=6 in; tilt=0 deg;"
              + " gap=0.5 in; gap-spacing=66 in; edge-distance=3 ft",
          "panel-wind-pressure: edition=asce-7-16; wind-speed=115 mph; exposure=C; height=20 ft;"
              + " roof=gable; slope=15 deg; zone=2r; area=17.55 ft²; top-height=11 in; tilt=0 deg;"
              + " gap=0.5 in; gap-spacing=66 in; edge-distance=3 ft",
          "roof-wind-pressure: edition=asce-7-22; wind-speed=148 mph; exposure=C; height=15 ft;"
              + " roof=flat; slope=0 deg; zone=1'; area=300 ft²");

  private WindSamples() {}
}
