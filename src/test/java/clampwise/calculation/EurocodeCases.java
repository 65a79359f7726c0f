package clampwise.calculation;

import java.util.List;
import java.util.stream.Stream;

/** Worked cases of EN 1991-1-3 and EN 1991-1-4. */
final class EurocodeCases {

  static final List<String> ALL =
      Stream.of(peak(), ridged(), flat(), snow()).flatMap(List::stream).toList();

  private EurocodeCases() {}

  private static List<String> peak() {
    String eight =
        "EN 1991-1-4, vb 26, category III, z 8 [read]"
            + "| en-peak-pressure terrain=III wind-speed=26m/s height=8m |";
    String thirteen =
        "EN 1991-1-4, vb 22, category III, z 13.48 [read]"
            + "| en-peak-pressure terrain=III wind-speed=22m/s height=13.48m |";
    return List.of(
        eight + "q_b | 422.5 Pa",
        eight + "k_r | 0.215",
        eight.replace("[read]", "[computed]") + "q_p | 661.8 Pa",
        thirteen + "k_r | 0.215",
        thirteen + "c_r | 0.82",
        thirteen + "v_m | 18.0 m/s",
        thirteen + "I_v | 0.263",
        thirteen.replace("[read]", "[computed]") + "q_p | 577 Pa",
        "EN 1991-1-4, vb 30, category I, z 7 [library]"
            + "| en-peak-pressure terrain=I wind-speed=30m/s height=7m | q_p | 1439 Pa",
        "EN 1991-1-4, vb 25, category II, z 5 [library]"
            + "| en-peak-pressure terrain=II wind-speed=25m/s height=5m | q_p | 753.6 Pa",
        "EN 1991-1-4, vb 25, category II, z 30 [library]"
            + "| en-peak-pressure terrain=II wind-speed=25m/s height=30m | q_p | 1208.5 Pa",
        "EN 1991-1-4, wind across 12 m, h 7 [library]"
            + "| en-zone-sizes width=12m height=7m | x_F | 3.0 m",
        "EN 1991-1-4, wind across 12 m, h 7 [library]"
            + "| en-zone-sizes width=12m height=7m | y_F | 1.2 m");
  }

  private static List<String> ridged() {
    String roof =
        "EN 1991-1-4, duopitch 10°, 8 m by 12 m, zone %s [library]| en-roof-pressure"
            + " shape=duopitch pitch=10deg along=12m across=8m depth=4m height=7m"
            + " peak-pressure=1439Pa area=10m2 direction=%s at-along=%sm at-up=%sm | %s kPa";
    return Stream.of(
            "F,up-the-slope,1,0.5,w_up | -1.871",
            "G,up-the-slope,6,0.5,w_up | -1.44",
            "H,up-the-slope,6,2,w_up | -0.65",
            "J,down-the-slope,6,3.9,w_up | -1.15",
            "I,down-the-slope,6,1,w_up | -0.72",
            "F,up-the-slope,1,0.5,w_down | 0.144",
            "H,up-the-slope,6,2,w_down | 0.144",
            "F,from-the-left,0.4,0.5,w_up | -2.09",
            "G,from-the-left,0.4,3,w_up | -1.87",
            "H,from-the-left,2,2,w_up | -0.94",
            "I,from-the-left,8,2,w_up | -0.79")
        .map(each -> roof.formatted((Object[]) each.split(",")))
        .toList();
  }

  private static List<String> flat() {
    String roof =
        "EN 1991-1-4, flat roof, 10 m by 20 m, h 5, zone %s [library]| en-roof-pressure shape=flat"
            + " pitch=0deg along=20m across=10m depth=10m height=5m peak-pressure=753.6Pa area=10m2"
            + " direction=up-the-slope at-along=%sm at-up=%sm | %s kPa";
    return Stream.of(
            "F,1,0.5,w_up | -1.36",
            "G,10,0.5,w_up | -0.90",
            "H,10,3,w_up | -0.53",
            "I,10,8,w_up | -0.15",
            "I,10,8,w_down | 0.15")
        .map(each -> roof.formatted((Object[]) each.split(",")))
        .toList();
  }

  private static List<String> snow() {
    String drifted =
        "EN 1991-1-3, sk .65, duopitch 8.5° [read]"
            + "| en-snow ground-snow=0.65kPa pitch=8.5deg other-pitch=8.5deg held=no |";
    return List.of(
        shape("0", "no", "0.8"),
        shape("30", "no", "0.8"),
        shape("45", "no", "0.4"),
        shape("60", "no", "0.0"),
        shape("60", "yes", "0.8"),
        drifted + "s_1 | 0.52 kPa",
        drifted + "s_2 | 0.26 kPa");
  }

  private static String shape(String degrees, String held, String printed) {
    return "EN 1991-1-3, table 5.2, %s°%s [library]| en-snow ground-snow=1kPa pitch=%sdeg held=%s | mu_1 | %s"
        .formatted(
            degrees, held.equals("yes") ? ", kept from sliding" : "", degrees, held, printed);
  }
}
