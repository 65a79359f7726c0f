package clampwise.calculation;

import java.util.List;

/** Worked cases of load combinations and of loads on a slope. */
final class LoadCases {

  static final List<String> ALL =
      List.of(
          "D 3, S 20, W +16, ASD of 7-16 [computed]"
              + "| load-combinations edition=asce-7-16 method=asd dead=3psf snow=20psf"
              + " wind-toward=16psf | q_down | 25.2 psf",
          "D 3, W -36.38, ASD of 7-16 [computed]"
              + "| load-combinations edition=asce-7-16 method=asd dead=3psf wind-away=-36.38psf"
              + "| q_up | -20.03 psf",
          "D 20, L 50, Lr 15, W 10, LRFD of 7-16 [library]"
              + "| load-combinations edition=asce-7-16 method=lrfd dead=20psf live=50psf roof-live=15psf"
              + " wind-toward=10psf | q_down | 111.5 psf",
          "D 100, W -150, LRFD of 7-16 [library]"
              + "| load-combinations edition=asce-7-16 method=lrfd dead=100psf wind-away=-150psf"
              + "| q_up | -60 psf",
          "D 3, S 30, W +16, ASD of 7-22 [computed]"
              + "| load-combinations edition=asce-7-22 method=asd dead=3psf snow=30psf"
              + " wind-toward=16psf | q_down | 25.95 psf",
          "D 3, S 30, W +16, LRFD of 7-22 [computed]"
              + "| load-combinations edition=asce-7-22 method=lrfd dead=3psf snow=30psf"
              + " wind-toward=16psf | q_down | 41.6 psf",
          "S 20 on a slope of 4:12 [computed]"
              + "| slope-components load=20psf by=plan slope=18.435deg | q_n | 18.00 psf",
          "D 3 on a slope of 4:12 [computed]"
              + "| slope-components load=3psf by=slope slope=18.435deg | q_s | 0.949 psf");

  private LoadCases() {}
}
