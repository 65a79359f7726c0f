package clampwise.gate;

import clampwise.job.Choice;
import clampwise.job.Job;
import clampwise.job.Quantity;
import clampwise.job.Site;
import clampwise.units.QuantityPrint;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a job says of its site and revision.
 *
 * @param byName values as they print, by what they are
 */
record SiteValues(Map<String, String> byName) {

  private static final String NOTHING = "nothing";

  static SiteValues of(Job job) {
    Map<String, String> values = new LinkedHashMap<>();
    put(values, "revision", job.revision());
    Optional<Site> site = job.site();
    Optional<Site.Codes> codes = site.flatMap(Site::codes);
    put(values, "wind and snow standard", codes.flatMap(Site.Codes::loads));
    put(values, "electrical code", codes.flatMap(Site.Codes::electrical));
    put(values, "fire code", codes.flatMap(Site.Codes::fire));
    put(values, "wind speed", site.flatMap(Site::windSpeed).map(SiteValues::text));
    put(values, "ground snow load", site.flatMap(Site::groundSnow).map(SiteValues::text));
    put(values, "exposure", site.flatMap(Site::exposure).map(Choice::toString));
    put(values, "terrain", site.flatMap(Site::terrain).map(Choice::toString));
    put(values, "risk category", site.flatMap(Site::riskCategory).map(Choice::toString));
    put(values, "corrosivity", site.flatMap(Site::corrosivity).map(Choice::toString));
    return new SiteValues(values);
  }

  private static void put(Map<String, String> values, String name, Optional<?> value) {
    values.put(name, value.map(Object::toString).orElse(NOTHING));
  }

  private static String text(Quantity value) {
    return QuantityPrint.text(value.si(), value.unit());
  }

  /** One line for each value that is another. */
  List<String> changesTo(SiteValues after) {
    List<String> changes = new ArrayList<>();
    byName.forEach(
        (name, was) -> {
          String is = after.byName.getOrDefault(name, NOTHING);
          if (!is.equals(was)) {
            changes.add(name + ": " + was + " -> " + is);
          }
        });
    return changes;
  }
}
