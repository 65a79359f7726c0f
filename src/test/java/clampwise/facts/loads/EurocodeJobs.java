package clampwise.facts.loads;

import clampwise.calc.Outcome;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Work;
import clampwise.calc.wind.Pressures;
import clampwise.catalogue.LimitsReader;
import clampwise.facts.BaseJob;
import clampwise.facts.Fact;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import java.util.List;

/** A roof under EN 1991 with one module of 10 m², so that coefficients for 10 m² show. */
record EurocodeJobs(BaseJob job) {

  private static final String TEXT =
      """
      job: case
      units: {length: mm}
      site:
        codes: {loads: en-1991}
        wind-speed: 25 m/s
        terrain: II
        ground-snow: 0.65 kPa
      building:
        roof: flat
        length: 20 m
        width: 10 m
        eave-height: 5 m
      panels:
        sheet: {kind: standing-seam, profile: double-lock, metal: steel, thickness: 0.63 mm, pitch: 400, height: 32, substrate: open-purlins}
      planes:
        south:
          panel: sheet
          slope: 0 deg
          size: 20 m x 10 m
          seams: {first: 200}
      modules:
        M:
          length: 4 m
          width: 2.5 m
          mass: 20 kg
          loads-are: test
          clamp-zones: [{side: long, zone: 0 mm to 430 mm, down: 2400 Pa, up: 900 Pa}]
      parts:
        seam-clamps:
          SC:
            profiles: [double-lock]
            tested:
              - {metal: steel, thickness: 0.6 mm, substrates: [open-purlins], up: 2000 N, down: 9 kN, along: 9 kN, loads-are: resistance}
      fields:
        A:
          plane: south
          module: M
          orientation: landscape
          attachment: SC
          gap: 12
          block: {at: [8 m, 2 m], rows: 1, columns: 1}
          attach: {per-edge: 2}
      """;

  static EurocodeJobs flat(String... replacements) {
    return new EurocodeJobs(BaseJob.ofText(TEXT, replacements));
  }

  /**
   * A gable.
   *
   * @param alongM along its ridge [m]
   * @param halfM half of its width [m]
   * @param ridgeM height of its ridge [m]
   */
  static EurocodeJobs gable(
      double alongM, double halfM, double ridgeM, double degrees, String... replacements) {
    double rad = Math.toRadians(degrees);
    String text =
        TEXT.replace("roof: flat", "roof: gable")
            .replace("length: 20 m", "length: " + alongM + " m")
            .replace("width: 10 m", "width: " + 2 * halfM + " m")
            .replace("eave-height: 5 m", "eave-height: " + metres(ridgeM - halfM * Math.tan(rad)))
            .replace("slope: 0 deg", "slope: " + degrees + " deg")
            .replace("20 m x 10 m", alongM + " m x " + metres(halfM / Math.cos(rad)));
    return new EurocodeJobs(BaseJob.ofText(text, replacements));
  }

  private static String metres(double m) {
    return "%.7f m".formatted(m);
  }

  <T extends Fact> List<T> facts(Class<T> type) {
    return job.facts(type);
  }

  List<String> missing(Class<? extends Fact> question) {
    return job.missing(question);
  }

  PlaneLayout plane() {
    return job.layout().planes().get(0);
  }

  FieldSite site() {
    FieldLayout field = plane().fields().get(0);
    return new FieldSite(job.layout(), plane(), field, LimitsReader.read());
  }

  PlacedModule module() {
    return site().field().modules().get(0);
  }

  /** Wind on the first module. */
  Pressures pressures() {
    return EurocodeWind.of(site())
        .then(wind -> wind.show(module(), new Work(Measure.METRIC)))
        .result()
        .orElseThrow();
  }

  Outcome<FieldSnow> snow() {
    return EurocodeSnow.of(site());
  }

  /** The value of a symbol in the shown work of wind on the first module [SI]. */
  double wind(String symbol) {
    Work work = new Work(Measure.METRIC);
    EurocodeWind.of(site()).then(wind -> wind.show(module(), work)).result().orElseThrow();
    return work.lines().stream()
        .filter(line -> line.result().symbol().equals(symbol))
        .map(Line::result)
        .findFirst()
        .orElseThrow()
        .si();
  }
}
