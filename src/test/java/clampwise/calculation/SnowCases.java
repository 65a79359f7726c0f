package clampwise.calculation;

import java.util.List;
import java.util.stream.Stream;

/** Worked cases of snow after ASCE 7. */
final class SnowCases {

  static final List<String> ALL =
      Stream.of(roofs(), factors(), drifts()).flatMap(List::stream).toList();

  private SnowCases() {}

  private static List<String> roofs() {
    return List.of(
        flat("7-16, pg 30 [read]", "asce-7-16 ground-snow=30psf", "1", "1", "21 psf"),
        flat(
            "7-16, pg 20, Ce .9, Ct 1.2 [read]",
            "asce-7-16 ground-snow=20psf",
            "0.9",
            "1.2",
            "15.12 psf"),
        flat("7-16, pg 42.9 [2nd]", "asce-7-16 ground-snow=42.9psf", "1", "1", "30.03 psf"),
        "ASCE 7-16, pg 25, Ce .9, Ct 1.1, Is 1.1 [2nd]"
            + "| snow-flat-roof edition=asce-7-16 ground-snow=25psf risk-category=III"
            + " exposure-factor=0.9 thermal-factor=1.1 | p_f | 19.0575 psf",
        flat("7-22, pg 30, Ct 1.14 [2nd]", "asce-7-22 ground-snow=30psf", "1", "1.14", "23.94 psf"),
        flat(
            "7-22, pg 40, Ce .9, Ct 1.13 [2nd]",
            "asce-7-22 ground-snow=40psf",
            "0.9",
            "1.13",
            "28.48 psf"),
        flat(
            "7-22, pg 40, Ce .9, Ct 1.2 [2nd]",
            "asce-7-22 ground-snow=40psf",
            "0.9",
            "1.2",
            "30.24 psf"),
        flat("7-22, pg 20, Ct 1.11 [2nd]", "asce-7-22 ground-snow=20psf", "1", "1.11", "15.54 psf"),
        "ASCE 7-16, pg 30, low slope [read]"
            + "| snow-minimum edition=asce-7-16 ground-snow=30psf risk-category=II slope=5deg"
            + "| p_m | 20 psf",
        "ASCE 7-22, pg 30, low slope [2nd]"
            + "| snow-minimum edition=asce-7-22 ground-snow=30psf risk-category=II slope=5deg"
            + "| p_m | 30 psf",
        density("7-16, pg 20 [read]", "asce-7-16 ground-snow=20psf", "16.6"),
        density("7-16, pg 42.9 [2nd]", "asce-7-16 ground-snow=42.9psf", "19.577"),
        density("7-16, pg 25 [2nd]", "asce-7-16 ground-snow=25psf", "17.25"),
        density("7-22, pg 30 [2nd]", "asce-7-22 ground-snow=30psf", "17.9"),
        density("7-22, pg 40 [2nd]", "asce-7-22 ground-snow=40psf", "19.2"));
  }

  private static String flat(
      String name, String ground, String exposure, String thermal, String printed) {
    return "ASCE %s| snow-flat-roof edition=%s risk-category=II exposure-factor=%s thermal-factor=%s | p_f | %s"
        .formatted(name, ground, exposure, thermal, printed);
  }

  private static String density(String name, String ground, String printed) {
    return "density of snow, ASCE %s| snow-density edition=%s risk-category=II | gamma | %s pcf"
        .formatted(name, ground, printed);
  }

  private static List<String> factors() {
    return List.of(
        thermal("27.5", "20", "1.065"),
        thermal("35", "25", "1.0825"),
        thermal("80", "50", "1.18"),
        thermal("30", "55", "1.20"),
        thermal("5", "60", "1.20"),
        thermal("30", "30", "1.14"),
        thermal("40", "30", "1.13"),
        thermal("20", "20", "1.11"),
        slope(
            "7-16, slippery warm roof at 4:12 [library]",
            "asce-7-16 slope=4:12 thermal-factor=1 resistance=30",
            "0.7933"),
        slope(
            "7-16, slippery, half-way, warm [computed]",
            "asce-7-16 slope=37.5deg thermal-factor=1 resistance=30",
            "0.5"),
        slope(
            "7-16, slippery, half-way, Ct 1.1 [computed]",
            "asce-7-16 slope=40deg thermal-factor=1.1",
            "0.5"),
        slope(
            "7-16, slippery, half-way, Ct 1.2 [computed]",
            "asce-7-16 slope=42.5deg thermal-factor=1.2",
            "0.5"),
        slope(
            "7-22, slippery cold roof at 8:12 [2nd]",
            "asce-7-22 slope=8:12 thermal-factor=1.2",
            "0.660"));
  }

  private static String thermal(String groundPsf, String resistance, String printed) {
    return "ASCE 7-22, table 7.3-3, pg %s, R %s [2nd]| snow-thermal-factor edition=asce-7-22 ground-snow=%spsf condition=heated resistance=%s | C_t | %s"
        .formatted(groundPsf, resistance, groundPsf, resistance, printed);
  }

  private static String slope(String name, String roof, String printed) {
    return "ASCE %s| snow-slope-factor edition=%s slippery=yes obstructed=no | C_s | %s"
        .formatted(name, roof, printed);
  }

  private static List<String> drifts() {
    String ridge =
        "ASCE 7-16, commentary C7.6, example 1 [library]"
            + "| snow-unbalanced edition=asce-7-16 ground-snow=30psf risk-category=II slope=6:12"
            + " eave-to-ridge=30ft balanced=23.1psf |";
    String parapet =
        "ASCE 7-22, parapet of 4 ft, lu 60 [2nd]"
            + "| snow-step-drift edition=asce-7-22 ground-snow=30psf risk-category=II winter-wind=0.55"
            + " rise=4ft lower-fetch=60ft balanced=23.94psf |";
    String step =
        "ASCE 7-22, step of 10 ft, lu 100 [2nd]"
            + "| snow-step-drift edition=asce-7-22 ground-snow=40psf risk-category=II winter-wind=0.5"
            + " rise=10ft upper-fetch=100ft balanced=28.476psf |";
    String earlier =
        "ASCE 7-16, pg 25, Is 1.1, lu 60 [2nd]"
            + "| snow-step-drift edition=asce-7-16 ground-snow=25psf risk-category=III rise=10ft"
            + " upper-fetch=60ft balanced=19.0575psf |";
    String sliding =
        "sliding snow from 30 ft at pf 28 psf [read]"
            + "| snow-sliding edition=asce-7-16 flat-roof-snow=28psf eave-to-ridge=30ft slope=4:12"
            + " slippery=yes |";
    return List.of(
        ridge + "p_wind | 6.93 psf",
        ridge + "p_lee | 46.64 psf",
        ridge + "x_d | 7.02 ft",
        "ASCE 7-16, pg 20, lu 300 [read]"
            + "| snow-drift-height edition=asce-7-16 ground-snow=20psf risk-category=II fetch=300ft"
            + "| h_d | 5.237 ft",
        "ASCE 7-22, pg 30, W2 .55, lu 60 [2nd]"
            + "| snow-drift-height edition=asce-7-22 ground-snow=30psf risk-category=II winter-wind=0.55"
            + " fetch=60ft | h_d | 3.147 ft",
        "ASCE 7-16, pg 20, windward, lu 35 [read]"
            + "| snow-step-drift edition=asce-7-16 ground-snow=20psf risk-category=II rise=20ft"
            + " lower-fetch=35ft balanced=15.12psf | h_wind | 1.344 ft",
        parapet + "h_wind | 2.360 ft",
        parapet + "w_wind | 18.88 ft",
        parapet + "p_wind | 42.24 psf",
        step + "h_lee | 3.727 ft",
        step + "w_lee | 14.91 ft",
        step + "p_lee | 71.55 psf",
        earlier + "h_lee | 2.7212 ft",
        earlier + "w_lee | 10.8846 ft",
        earlier + "p_lee | 46.940 psf",
        sliding + "w_sl | 336 plf",
        sliding + "p_sl | 22.4 psf");
  }
}
