package clampwise.calculation;

import java.util.List;
import java.util.stream.Stream;

/**
 * Worked cases of wind after ASCE 7, by the table of the exposure coefficient unless the case says
 * otherwise. Second-hand means a public transcription, or the guide to 7-22 as one quotes it.
 */
final class WindCases {

  private static final String SPEED_115 =
      " wind-speed=115mph exposure=C height=20ft exposure-method=table";
  private static final String SPEED_120 =
      " wind-speed=120mph exposure=B height=30ft exposure-method=table";

  static final List<String> ALL =
      Stream.of(velocity(), earlier(), later(), panels()).flatMap(List::stream).toList();

  private WindCases() {}

  private static List<String> velocity() {
    return List.of(
        velocity("7-16, V 105, B, h 12.1 [computed]", "7-16", "105mph B 12.1ft", "q_h | 13.67 psf"),
        velocity("7-16, V 115, C, h 20 [2nd]", "7-16", "115mph C 20ft", "q_h | 25.8998 psf"),
        velocity("7-22, V 115, C, h 20 [2nd]", "7-22", "115mph C 20ft", "q_h | 30.47 psf"),
        velocity("7-22, V 115, C, h 20 [2nd]", "7-22", "115mph C 20ft", "q_h_K_d | 25.90 psf"),
        velocity("7-16, V 120, B, h 30 [2nd]", "7-16", "120mph B 30ft", "q_h | 21.9341 psf"),
        velocity("7-16, V 130, D, h 18 [2nd]", "7-16", "130mph D 18ft", "K_z | 1.06"),
        velocity("7-16, V 130, D, h 18 [2nd]", "7-16", "130mph D 18ft", "q_h | 38.9809 psf"),
        velocity(
            "7-16, V 150, C, h 20, Kzt 1.2 [2nd]",
            "7-16",
            "150mph C 20ft topographic-factor=1.2",
            "q_h | 52.8768 psf"),
        velocity(
            "7-22, V 115, C, h 20, Ke .93 [2nd]",
            "7-22",
            "115mph C 20ft ground-factor=0.93",
            "q_h | 28.34 psf"),
        velocity(
            "7-16, V 115, C, h 20, Ke .93 [2nd]",
            "7-16",
            "115mph C 20ft ground-factor=0.93",
            "q_h | 24.09 psf"),
        velocity("7-16, V 115, B, h 40 [2nd]", "7-16", "115mph B 40ft", "q_h | 21.87 psf"),
        velocity("7-22, V 115, B, h 40 [2nd]", "7-22", "115mph B 40ft", "K_z | 0.74"),
        velocity("7-22, V 120, C, z 30 [2nd]", "7-22", "120mph C 30ft", "K_z | 0.98"),
        velocity("7-22, V 120, C, z 30 [computed]", "7-22", "120mph C 30ft", "q_h_K_d | 30.71 psf"),
        "ASCE 7-16, V 52 m/s, C, ground at 110 m, z 5 m, by formula [library]"
            + "| velocity-pressure edition=asce-7-16 wind-speed=52m/s exposure=C height=5m"
            + " ground-elevation=110m exposure-method=formula | q_h | 1202.905 Pa",
        "ASCE 7-16, V 52 m/s, C, ground at 110 m, z 6.5 m, by formula [library]"
            + "| velocity-pressure edition=asce-7-16 wind-speed=52m/s exposure=C height=6.5m"
            + " ground-elevation=110m exposure-method=formula | q_h | 1271.217 Pa");
  }

  private static String velocity(String name, String edition, String site, String printed) {
    String[] words = site.split(" ", 3);
    String[] height = words[2].split(" ", 2);
    String more = height.length > 1 ? " " + height[1] : "";
    return "ASCE %s| velocity-pressure edition=asce-%s wind-speed=%s exposure=%s height=%s%s exposure-method=table | %s"
        .formatted(name, edition, words[0], words[1], height[0], more, printed);
  }

  private static List<String> earlier() {
    String flat = SPEED_115 + " roof=flat slope=0deg least-width=50ft area=32ft2";
    String gable = SPEED_120 + " roof=gable slope=15deg least-width=40ft area=50ft2";
    String low =
        " wind-speed=130mph exposure=D height=18ft exposure-method=table roof=monoslope slope=5deg"
            + " least-width=80ft area=75ft2";
    String large =
        " wind-speed=150mph exposure=C height=20ft topographic-factor=1.2 exposure-method=table"
            + " roof=flat slope=0deg area=600ft2";
    String parapet =
        " wind-speed=115mph exposure=C height=45ft exposure-method=table roof=flat slope=0deg"
            + " parapet=3ft least-width=80ft area=50ft2";
    return Stream.of(
            zones(
                "ASCE 7-16, flat roof, 32 ft² [2nd]",
                "7-16" + flat,
                "1 -43.3,1' -28.0,2 -57.3,3 -73.7"),
            List.of(
                toward("ASCE 7-16, flat roof, 32 ft² [2nd]", "7-16" + flat + " zone=1", "16.0")),
            zones(
                "ASCE 7-16, gable 15°, 50 ft² [2nd]",
                "7-16" + gable,
                "1 -29.1,2e -29.1,2r -47.8,2n -47.8,3e -47.8,3r -55.3"),
            zones(
                "ASCE 7-16, monoslope 5°, 75 ft² [2nd]",
                "7-16" + low,
                "1 -49.9,2 -54.3,2' -66.0,3 -56.7,3' -74.3"),
            zones(
                "ASCE 7-16, flat roof, 600 ft² [2nd]",
                "7-16" + large,
                "1 -62.4,1' -36.5,2 -83.5,3 -83.5"),
            List.of(
                toward("ASCE 7-16, flat roof, 600 ft² [2nd]", "7-16" + large + " zone=1", "20.1")),
            zones(
                "ASCE 7-16, flat roof behind a parapet of 3 ft [2nd]",
                "7-16" + parapet,
                "1 -48.8,1' -33.1,2 -64.7,3 -80.9"))
        .flatMap(List::stream)
        .toList();
  }

  private static List<String> later() {
    String guide =
        " wind-speed=148mph exposure=C height=15ft exposure-method=table roof=flat slope=0deg";
    String flat = SPEED_115 + " roof=flat slope=0deg area=32ft2";
    String gable = SPEED_120 + " roof=gable slope=15deg area=50ft2";
    String steep = SPEED_115 + " roof=gable slope=35deg area=";
    String hip = SPEED_115 + " roof=hip slope=25deg area=32ft2 hip-curve=";
    String low = SPEED_115 + " roof=monoslope slope=5deg area=32ft2";
    String hall =
        " wind-speed=130mph exposure=C height=22ft exposure-method=table roof=gable slope=25deg"
            + " least-width=40ft area=30ft2";
    return Stream.of(
            zones(
                "ASCE 7-22, flat roof, 10 ft² [computed]",
                "7-22" + guide + " area=10ft2",
                "1 -76.17,1' -43.75,2 -100.47,3 -136.94"),
            zones(
                "ASCE 7-22, flat roof, 300 ft² [computed]",
                "7-22" + guide + " area=300ft2",
                "1 -51.51,1' -34.09,2 -68.77,3 -73.53"),
            hips(),
            zones(
                "ASCE 7-22, flat roof, 32 ft² [2nd]",
                "7-22" + flat,
                "1 -43.301,1' -27.972,2 -57.301,3 -73.680"),
            zones(
                "ASCE 7-22, gable 15°, 50 ft² [2nd]",
                "7-22" + gable,
                "1 -32.248,2 -43.137,3 -55.315"),
            zones(
                "ASCE 7-22, gable 35°, 10 ft² [2nd]",
                "7-22" + steep + "10ft2",
                "1 -51.282,2 -56.462,3 -69.412"),
            zones(
                "ASCE 7-22, gable 35°, 600 ft² [2nd]",
                "7-22" + steep + "600ft2",
                "1 -25.382,2 -30.562,3 -30.562"),
            List.of(
                toward(
                    "ASCE 7-22, gable 35°, 10 ft² [2nd]",
                    "7-22" + steep + "10ft2 zone=1",
                    "27.972")),
            zones(
                "ASCE 7-22, hip 25°, line to 100 ft² [2nd]",
                "7-22" + hip + "to-100-sq-ft",
                "1 -33.072,2 -43.378,3 -43.378"),
            zones(
                "ASCE 7-22, hip 25°, line to 200 ft² [2nd]",
                "7-22" + hip + "to-200-sq-ft",
                "2 -46.41,3 -46.41"),
            zones(
                "ASCE 7-22, monoslope 5°, 32 ft² [2nd]",
                "7-22" + low,
                "1 -33.152,2 -37.023,2' -44.793,3 -43.432,3' -58.918"),
            zones("ASCE 7-22, gable 25°, 30 ft² [2nd]", "7-22" + hall, "1 -47.9,2 -69.4,3 -81.4"),
            List.of(
                toward("ASCE 7-22, gable 25°, 30 ft² [2nd]", "7-22" + hall + " zone=1", "22.6")))
        .flatMap(List::stream)
        .toList();
  }

  private static List<String> hips() {
    return List.of(hip("1", "-1.41"), hip("2", "-1.97"), hip("3", "-2.13"));
  }

  private static String hip(String zone, String printed) {
    return "ASCE 7-22, hip 15°, 32 ft² [2nd]| external-coefficient edition=asce-7-22 height=20ft"
        + " roof=hip slope=15deg area=32ft2 zone=%s | GC_p_neg | %s".formatted(zone, printed);
  }

  private static List<String> panels() {
    String panel =
        "| panel-wind-pressure edition=asce-7-16"
            + SPEED_115
            + " roof=gable slope=15deg zone=2r area=17.55ft2 top-height=6in tilt=0deg gap=0.5in"
            + " gap-spacing=66in edge-distance=3ft |";
    String name = "ASCE 7-16, panel of 17.55 ft² in zone 2r [computed]";
    String equation =
        "| panel-equation edition=asce-7-22 velocity-pressure=22.86psf coefficient-up=-1.24"
            + " equalisation-factor=0.67 edge-factor=";
    return List.of(
        "ASCE 7-22, panel at the perimeter of a gable roof [2nd]"
            + equation
            + "1.5 | p_away | -24.2 psf",
        "ASCE 7-22, panel inside the array of a gable roof [2nd]"
            + equation
            + "1 | p_away | -16.1 psf",
        name + panel + "GC_p_neg | -2.6505",
        name + panel + "gamma_a | 0.7023",
        name + panel + "p_away | -72.32 psf",
        name + panel + "p_toward | 16.00 psf",
        "equalisation of one module of 21 ft² [computed]"
            + "| equalisation-factor edition=asce-7-16 area=21ft2 | gamma_a | 0.67");
  }

  /** One case for each zone, written as zone and pressure. */
  private static List<String> zones(String name, String roof, String printed) {
    return Stream.of(printed.split(","))
        .map(each -> each.split(" "))
        .map(
            each ->
                "%s, zone %s%s| roof-wind-pressure edition=asce-%s zone=%s | p_away | %s psf"
                    .formatted(before(name), each[0], tag(name), roof, each[0], each[1]))
        .toList();
  }

  private static String toward(String name, String roof, String printed) {
    return "%s| roof-wind-pressure edition=asce-%s | p_toward | %s psf"
        .formatted(name, roof, printed);
  }

  private static String before(String name) {
    return name.substring(0, name.indexOf(" ["));
  }

  private static String tag(String name) {
    return name.substring(name.indexOf(" ["));
  }
}
