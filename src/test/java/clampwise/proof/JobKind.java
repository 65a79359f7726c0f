package clampwise.proof;

import java.util.List;

/**
 * A kind of clean job.
 *
 * @param name as it stands in the table
 * @param parts files of {@code jobs/} that are laid over each other, in order
 * @param size how large the fields are
 */
record JobKind(String name, List<String> parts, Size size) {

  /** How large the fields of a job are. */
  enum Size {
    SMALL,
    LARGE
  }

  static final List<JobKind> ALL =
      List.of(
          of("seam, gable, US 2016, imperial", "seam-imperial gable-imperial things us-16 wired"),
          of("seam, gable, US 2022, metric", "seam-metric gable-metric things us-22 wired"),
          of("seam, gable, EN, metric", "seam-metric gable-metric things en en-seam-parts"),
          of(
              "seam, gable, EN, IEC 62548, metric",
              "seam-metric gable-metric things en en-seam-parts wired wired-iec"),
          of("seam, hip, US 2016, metric", "seam-metric hip-metric hip-things us-16"),
          of("seam, monoslope, US 2022, imperial", "seam-imperial shed-imperial things us-22"),
          of("seam, flat, US 2016, fire", "seam-metric flat-metric hall-things us-16 fire-hall"),
          of("seam, house, US 2016, fire", "seam-metric house-metric us-16 fire-house wired"),
          of(
              "seam, house, US 2016, Oregon",
              "seam-metric house-metric us-16 fire-house local-oregon"),
          of("seam, hip, US 2022, NFPA 1", "seam-metric hip-metric us-22 local-nfpa"),
          of(
              "seam, flat, US 2022, New York",
              "seam-metric flat-metric us-22 fire-hall local-new-york"),
          of("seam, hall, US 2016, large", JobKind.LARGE_HALL, Size.LARGE),
          of("rib, gable, US 2022, metric", "rib-metric gable-metric things us-22"),
          of("rib, gable, US 2016, imperial", "rib-imperial gable-imperial things us-16 wired"),
          of("rib, monoslope, EN, metric", "rib-metric shed-metric things en en-rib-parts"),
          of("corrugation, monoslope, US 2016", "wave-imperial shed-imperial things us-16"),
          of("corrugation, gable, US 2022", "wave-imperial gable-imperial things us-22 wired"));

  private static final String LARGE_HALL = "seam-imperial hall-imperial us-16 fire-hall wired";

  private static JobKind of(String name, String parts) {
    return of(name, parts, Size.SMALL);
  }

  private static JobKind of(String name, String parts, Size size) {
    return new JobKind(name, List.of(parts.split(" ")), size);
  }

  boolean has(String part) {
    return parts.contains(part);
  }

  boolean isOf(String roof) {
    return parts.get(0).startsWith(roof);
  }

  boolean isImperial() {
    return parts.get(0).endsWith("imperial");
  }
}
