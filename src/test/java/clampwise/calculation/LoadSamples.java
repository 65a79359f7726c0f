package clampwise.calculation;

import java.util.List;

/** Samples of snow, combinations and Eurocode: the branches that random inputs seldom reach. */
final class LoadSamples {

  static final List<String> ALL =
      List.of(
          "snow-thermal-factor: edition=asce-7-22; ground-snow=35 psf; condition=heated; resistance=25",
          "snow-thermal-factor: edition=asce-7-22; ground-snow=30 psf; condition=heated; resistance=25",
          "snow-thermal-factor: edition=asce-7-22; ground-snow=35 psf; condition=heated; resistance=30",
          "snow-roof: edition=asce-7-22; ground-snow=30 psf; risk-category=II; terrain=C;"
              + " roof-exposure=fully; condition=heated; resistance=25; slippery=yes;"
              + " obstructed=no; slope=4:12; eave-to-ridge=40 ft; shape=ridged; winter-wind=0.5",
          "snow-roof: edition=asce-7-22; ground-snow=20 psf; risk-category=III; terrain=B;"
              + " roof-exposure=sheltered; condition=unheated; slippery=no; slope=0.5 deg;"
              + " eave-to-ridge=60 ft; shape=flat",
          "snow-unbalanced: edition=asce-7-16; ground-snow=30 psf; risk-category=III; slope=6:12;"
              + " eave-to-ridge=18 ft; balanced=20 psf; simple-rafters=yes",
          "snow-step-drift: edition=asce-7-16; ground-snow=20 psf; risk-category=II; rise=5 ft;"
              + " upper-fetch=300 ft; lower-fetch=12 ft; balanced=15.12 psf",
          "snow-step-drift: edition=asce-7-22; ground-snow=40 psf; risk-category=II; winter-wind=0.5;"
              + " rise=3 ft; upper-fetch=100 ft; lower-fetch=200 ft; balanced=28.5 psf",
          "en-roof-coefficient: shape=flat; pitch=2 deg; direction=from-the-left; zone=F;"
              + " area=2 m²; parapet-ratio=0.03",
          "en-roof-coefficient: shape=monopitch; pitch=20 deg; direction=from-the-right;"
              + " zone=F-low; area=2 m²",
          "en-roof-coefficient: shape=duopitch; pitch=52 deg; direction=up-the-slope; zone=F;"
              + " area=2 m²",
          "en-roof-pressure: shape=duopitch; pitch=10 deg; along=30 m; across=18 m; depth=9 m;"
              + " height=6 m; peak-pressure=800 Pa; area=1.9 m²; direction=down-the-slope;"
              + " at-along=4 m; at-up=8.5 m",
          "en-snow-step-drift: ground-snow=800 Pa; rise=3 m; upper-length=9 m; lower-length=3 m;"
              + " upper-pitch=35 deg; upper-slope-length=9 m; from-wall=2 m");

  private LoadSamples() {}
}
