package clampwise.facts.roof;

import clampwise.facts.BaseJob;

/** The base jobs of the rules with some of their text replaced. */
final class RoofJobs {

  private RoofJobs() {}

  static BaseJob seams(String... replacements) {
    return BaseJob.replacing("seam-roof", replacements);
  }

  static BaseJob ribs(String... replacements) {
    return BaseJob.replacing("rib-roof", replacements);
  }

  static BaseJob crests(String... replacements) {
    return BaseJob.replacing("corrugated-roof", replacements);
  }
}
