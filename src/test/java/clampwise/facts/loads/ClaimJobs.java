package clampwise.facts.loads;

import clampwise.catalogue.LimitsReader;
import clampwise.facts.BaseJob;
import clampwise.facts.Fact;
import clampwise.facts.layout.PlaneLayout;
import java.util.Arrays;
import java.util.List;

/** The base job on seams with some of its text replaced, and what follows from it. */
record ClaimJobs(BaseJob job) {

  private static final String SNOW = "thermal-factor: \"1.2\", simple-rafters: no}\n";

  /** Each second text stands for the one before it. */
  static ClaimJobs with(String... replacements) {
    return new ClaimJobs(BaseJob.replacing("seam-roof", replacements));
  }

  /** The same with the exposure coefficient from its table, as the numbers by hand have it. */
  static ClaimJobs byTable(String claims) {
    return claiming(claims, SNOW, SNOW + "  wind: {exposure-coefficient: table}\n");
  }

  /** The base job with more among its claims. */
  static ClaimJobs claiming(String claims, String... replacements) {
    String[] all = Arrays.copyOf(replacements, replacements.length + 2);
    all[replacements.length] = "claims:\n";
    all[replacements.length + 1] = "claims:\n" + claims.indent(2);
    return with(all);
  }

  <T extends Fact> List<T> facts(Class<T> type) {
    return job.facts(type);
  }

  List<String> missing(Class<? extends Fact> question) {
    return job.missing(question);
  }

  /** The only field. */
  FieldSite site() {
    PlaneLayout plane = job.layout().planes().get(0);
    return new FieldSite(job.layout(), plane, plane.fields().get(0), LimitsReader.read());
  }
}
