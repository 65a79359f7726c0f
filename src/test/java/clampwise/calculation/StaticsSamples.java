package clampwise.calculation;

import java.util.List;

/** Samples of the load path and of movement whose inputs hang together. */
final class StaticsSamples {

  static final List<String> ALL =
      List.of(
          "beam-reactions: to=1.5 m; supports=0 m, 1.2 m; load=500 N/m",
          "beam-reactions: to=4 m; supports=0 m, 1 m, 2 m, 3 m, 4 m; load=1 N/m",
          "beam-reactions: from=-1 ft; to=12 ft; supports=0 ft, 4 ft, 10 ft; load=20 plf, 35 plf;"
              + " load-from=-1 ft, 5 ft; load-to=4 ft, 11 ft; forces=200 lbf, -90 lbf;"
              + " force-places=2 ft, 12 ft",
          "beam-reactions: to=2 m; supports=0 m, 1 m, 2 m; forces=32 N; force-places=0.5 m",
          "two-clamps: edge=1722 mm; left=300 mm; right=1400 mm; load=810 N/m",
          "two-clamps: edge=1722 mm; left=200 mm; right=700 mm; load=810 N/m",
          "module-to-clamps: pressure=30 psf; edge=1722 mm; depth=1134 mm; clamps=300 mm, 1400 mm",
          "module-to-clamps: pressure=1436 Pa; edge=2278 mm; depth=1134 mm;"
              + " clamps=200 mm, 1100 mm, 2050 mm; line=end",
          "tributary: depth=1134 mm; gap=12 mm; spacing=1219 mm; pressure=1436 Pa",
          "spacing-allowed: pressure=46.6 psf; depth=1134 mm; gap=12 mm; strength=520 lbf;"
              + " pitch=16 in",
          "spacing-allowed: pressure=90 psf; depth=1134 mm; line=end; strength=80 lbf; pitch=24 in",
          "attachment-utilisation: up=451 lbf; along=60 lbf; demand-is=asd; tested-up=1200 lbf;"
              + " tested-along=500 lbf; loads-are=ultimate; safety-factor=2; interaction=quadratic",
          "attachment-utilisation: down=2 kN; demand-is=lrfd; tested-down=3 kN; loads-are=ultimate;"
              + " resistance-factor=0.5; interaction=none",
          "attachment-utilisation: up=1 kN; along=300 N; demand-is=lrfd; tested-up=2 kN;"
              + " tested-along=900 N; loads-are=design",
          "attachment-utilisation: up=300 lbf; demand-is=asd; tested-up=520 lbf;"
              + " loads-are=allowable",
          "seam-to-clips: clips=0 ft, 5 ft, 10 ft, 15 ft; from=-1 ft; attachments=2 ft, 6 ft, 9 ft;"
              + " forces=400 lbf; pressure=25 psf; pitch=16 in; clip-strength=350 lbf",
          "screw-pull-out: thickness=0.0239 in; diameter=0.25 in; tensile-strength=65000 psi",
          "fixed-point: slope=4:12; attachments=3 kN; panel-weight=1.5 psf; run=30 ft; pitch=16 in;"
              + " snow=20 psf; snow-run=4 ft; strength=5 kN",
          "down-slope: slope=4:12; mass=21.5 kg; length=1722 mm; width=1134 mm; snow=1 kPa;"
              + " modules=6",
          "column-slip: force=3915 N; attachments=14; slip-strength=410 lbf",
          "dead-load-screen: dead=3 psf; live=20 psf; added=3 psf",
          "concentrated-load: span=5 ft; test-load=300 lbf; test-sag=0.4 in",
          "expansion: metal=steel; length=40 ft; coldest=0 °F; hottest=160 °F; travel=1 in",
          "differential-expansion: length=13752 mm; coldest=-10 °C; hottest=50 °C; joints=12;"
              + " roof-coefficient=12; slack=1 mm",
          "jumper-slack: movement=9.6 mm",
          "standoff-gap: insulated=82.574 °C; open=53.716 °C",
          "standoff-gap: insulated=68 °C; open=50 °C");

  private StaticsSamples() {}
}
