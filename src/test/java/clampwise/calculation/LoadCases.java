package clampwise.calculation;

import java.util.List;

/** Cases of wind, snow and combinations, one or two a topic; their packages hold all of them. */
final class LoadCases {

  private static final String WIND = " wind-speed=115mph exposure=C height=20ft";
  private static final String PANEL =
      "| panel-wind-pressure edition=asce-7-16 wind-speed=115mph exposure=C height=20ft roof=gable"
          + " slope=15deg zone=2r area=17.55ft2 top-height=6in tilt=0deg gap=0.5in gap-spacing=66in"
          + " edge-distance=3ft |";
  private static final String PEAK = "| en-peak-pressure terrain=III wind-speed=26m/s height=8m |";

  static final List<String> ALL =
      List.of(
          "ASCE 7-16, V 115, C, h 20 [library]| velocity-pressure edition=asce-7-16"
              + WIND
              + "| q_h | 25.8998 psf",
          "ASCE 7-22, V 115, C, h 20 [library]| velocity-pressure edition=asce-7-22"
              + WIND
              + "| q_h | 30.47 psf",
          "ASCE 7-16, V 120, B, h 30 [library]"
              + "| velocity-pressure edition=asce-7-16 wind-speed=120mph exposure=B height=30ft"
              + "| q_h | 21.9341 psf",
          "ASCE 7-16, V 130, D, h 18 [library]"
              + "| velocity-pressure edition=asce-7-16 wind-speed=130mph exposure=D height=18ft"
              + "| q_h | 38.9809 psf",
          "ASCE 7-22, flat roof, V 148, C, h 15, zone 3 [computed]"
              + "| roof-wind-pressure edition=asce-7-22 wind-speed=148mph exposure=C height=15ft"
              + " roof=flat slope=0deg zone=3 area=10ft2 | p_away | -136.94 psf",
          "ASCE 7-16, panel of 17.55 ft² in zone 2r [computed]" + PANEL + "GC_p_neg | -2.6505",
          "ASCE 7-16, panel of 17.55 ft² in zone 2r [computed]" + PANEL + "gamma_a | 0.7023",
          "ASCE 7-16, panel of 17.55 ft² in zone 2r [computed]" + PANEL + "p_away | -72.32 psf",
          "ASCE 7-16, panel of 17.55 ft² in zone 2r [computed]" + PANEL + "p_toward | 16.00 psf",
          "equalisation of one module of 21 ft² [computed]"
              + "| equalisation-factor edition=asce-7-16 area=21ft2 | gamma_a | 0.67",
          "ASCE 7-16, pg 20, Ce .9, Ct 1.2 [read]"
              + "| snow-flat-roof edition=7-16 ground-snow=20psf risk-category=II"
              + " exposure-factor=0.9 thermal-factor=1.2 | p_f | 15.12 psf",
          "ASCE 7-16, slippery warm roof at 4:12 [library]"
              + "| snow-slope-factor edition=7-16 slope=4:12 thermal-factor=1 slippery=yes"
              + " obstructed=no resistance=30 | C_s | 0.7933",
          "sliding snow from 30 ft at pf 28 psf [read]"
              + "| snow-sliding edition=7-16 flat-roof-snow=28psf eave-to-ridge=30ft slope=4:12"
              + " slippery=yes | w_sl | 336 plf",
          "sliding snow from 30 ft at pf 28 psf [read]"
              + "| snow-sliding edition=7-16 flat-roof-snow=28psf eave-to-ridge=30ft slope=4:12"
              + " slippery=yes | p_sl | 22.4 psf",
          "D 3, S 20, W +16, ASD of 7-16 [computed]"
              + "| load-combinations edition=7-16 method=asd dead=3psf snow=20psf"
              + " wind-toward=16psf | q_down | 25.2 psf",
          "D 3, W -36.38, ASD of 7-16 [computed]"
              + "| load-combinations edition=7-16 method=asd dead=3psf wind-away=-36.38psf"
              + "| q_up | -20.03 psf",
          "EN 1991-1-4, vb 26, category III, z 8 [read]" + PEAK + "q_b | 422.5 Pa",
          "EN 1991-1-4, vb 26, category III, z 8 [read]" + PEAK + "k_r | 0.215",
          "EN 1991-1-3, sk .65, duopitch 8.5° [read]"
              + "| en-snow ground-snow=0.65kPa pitch=8.5deg | s | 0.52 kPa");

  private LoadCases() {}
}
