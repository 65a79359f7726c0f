package clampwise.calculation;

import java.util.List;

/** Cases of the load path and of movement. */
final class StaticsCases {

  private static final String FOUR_SPANS =
      "| beam-reactions to=4m supports=0m,1m,2m,3m,4m load=1N/m |";
  private static final String OVERHANG = "| beam-reactions to=1.5m supports=0m,1.2m load=500N/m |";
  private static final String COLUMN =
      "| down-slope slope=4:12 mass=21.5kg length=1722mm width=1134mm snow=1kPa modules=6 |";

  static final List<String> ALL =
      List.of(
          "beam with one overhang, handbook [handbook]" + OVERHANG + "R_1 | 281.25 N",
          "beam with one overhang, handbook [handbook]" + OVERHANG + "R_2 | 468.75 N",
          "beam with one overhang, handbook [handbook]" + OVERHANG + "M_2 | -22.5 N m",
          "beam with one overhang, handbook [handbook]" + OVERHANG + "M_1_2 | 79.10 N m",
          "beam with one overhang, handbook [handbook]"
              + "| two-clamps edge=1.5m left=0m right=1.2m load=500N/m | M | 79.10 N m",
          "two equal spans, table of continuous beams [read]"
              + "| beam-reactions to=2m supports=0m,1m,2m load=1N/m | R_2 | 1.250 N",
          "two equal spans, table of continuous beams [read]"
              + "| beam-reactions to=2m supports=0m,1m,2m load=1N/m | M_1_2 | 0.0703 N m",
          "three equal spans, table of continuous beams [read]"
              + "| beam-reactions to=3m supports=0m,1m,2m,3m load=1N/m | R_1 | 0.400 N",
          "three equal spans, table of continuous beams [read]"
              + "| beam-reactions to=3m supports=0m,1m,2m,3m load=1N/m | R_2 | 1.100 N",
          "three equal spans, table of continuous beams [read]"
              + "| beam-reactions to=3m supports=0m,1m,2m,3m load=1N/m | M_2_3 | 0.025 N m",
          "four equal spans, table of continuous beams [read]" + FOUR_SPANS + "R_1 | 0.393 N",
          "four equal spans, table of continuous beams [read]" + FOUR_SPANS + "R_2 | 1.143 N",
          "four equal spans, table of continuous beams [read]" + FOUR_SPANS + "R_3 | 0.929 N",
          "four equal spans, table of continuous beams [read]" + FOUR_SPANS + "M_1_2 | 0.0772 N m",
          "force on one of two spans [memory]"
              + "| beam-reactions to=2m supports=0m,1m,2m forces=32N force-places=0.5m"
              + "| R_3 | -3.000 N",
          "tributary area, inner line [computed]"
              + "| tributary depth=1134mm gap=12mm spacing=1219mm pressure=1436Pa | A_t | 1.397 m²",
          "tributary area, inner line [computed]"
              + "| tributary depth=1134mm gap=12mm spacing=48in pressure=30psf | F | 2007 N",
          "tributary area, inner line [computed]"
              + "| tributary depth=1134mm gap=12mm spacing=48in pressure=30psf | F | 451 lbf",
          "tributary area, end line [computed]"
              + "| tributary depth=1134mm spacing=48in pressure=30psf line=end | A_t | 0.691 m²",
          "tributary area, end line [computed]"
              + "| tributary depth=1134mm spacing=48in pressure=30psf line=end | F | 993 N",
          "ultimate 1,200 lbf over 2 [computed]"
              + "| attachment-utilisation up=451lbf demand-is=asd tested-up=1200lbf"
              + " loads-are=ultimate safety-factor=2 | U | 0.75",
          "ultimate 1,200 lbf over 3 [computed]"
              + "| attachment-utilisation up=451lbf demand-is=asd tested-up=1200lbf"
              + " loads-are=ultimate safety-factor=3 | U | 1.13",
          "module on 4:12 [computed]" + COLUMN + "W | 210.8 N",
          "module on 4:12 [computed]" + COLUMN + "W_s | 66.7 N",
          "snow on a module on 4:12 [computed]" + COLUMN + "S | 1853 N",
          "snow on a module on 4:12 [computed]" + COLUMN + "S_s | 586 N",
          "snow on a module on 4:12 [computed]" + COLUMN + "S_n | 1757 N",
          "column of six on 4:12 [computed]" + COLUMN + "E_s | 3915 N",
          "screw in 24 ga, AISI S100 [memory]"
              + "| screw-pull-out thickness=0.0239in diameter=0.25in tensile-strength=65000psi"
              + "| P_not | 330 lbf",
          "screw in 24 ga, AISI S100 [memory]"
              + "| screw-pull-out thickness=0.0239in diameter=0.25in tensile-strength=65000psi"
              + "| R | 110 lbf",
          "added-load screen [computed]"
              + "| dead-load-screen dead=3psf live=20psf added=3psf | i | 13 %",
          "added-load screen, live load dropped [computed]"
              + "| dead-load-screen dead=3psf live=20psf added=3psf | D_1 | 6.0 psf",
          "steel, 40 ft and 160 °F, 6.7 millionths [read]"
              + "| expansion metal=steel length=40ft coldest=0F hottest=160F | dL | 0.51 in",
          "steel, 40 ft and 160 °F [computed]"
              + "| expansion metal=steel length=480in coldest=0F hottest=160F | dL | 0.515 in",
          "steel, 100 ft and 100 °F, 6.5 millionths per °F [computed]"
              + "| expansion metal=steel coefficient=11.7 length=100ft coldest=0F hottest=100F"
              + "| dL | 0.78 in",
          "aluminium, 100 ft and 100 °F, 12.8 millionths per °F [computed]"
              + "| expansion metal=aluminium coefficient=23.04 length=100ft coldest=0F hottest=100F"
              + "| dL | 1.536 in",
          "twelve aluminium modules on steel, 60 K [computed]"
              + "| differential-expansion length=13752mm coldest=-10C hottest=50C"
              + " roof-coefficient=12 joints=12 | dL | 9.6 mm",
          "twelve aluminium modules on steel, each joint [computed]"
              + "| differential-expansion length=13752mm coldest=-10C hottest=50C"
              + " roof-coefficient=12 joints=12 | dj | 0.80 mm",
          "stand-off for temperature, national laboratory [read]"
              + "| standoff-gap insulated=82.574C open=53.716C | X | 3.49 cm");

  private StaticsCases() {}
}
