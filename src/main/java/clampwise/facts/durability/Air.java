package clampwise.facts.durability;

import clampwise.calc.trail.Table;
import clampwise.job.Choice;
import clampwise.job.Site;
import clampwise.job.Site.Corrosivity;
import clampwise.source.Span;
import java.util.Optional;

/**
 * The class of the air at the site.
 *
 * @param corrosivity its class
 * @param from how it is known, in words
 * @param at where it is written
 */
record Air(Corrosivity corrosivity, String from, Span at) {

  /** As written, else the mildest that the setting lets one expect. */
  static Optional<Air> of(Weathering weathering) {
    Optional<Site> site = weathering.job().site();
    return site.flatMap(Site::corrosivity)
        .map(written -> new Air(written.value(), "as written", written.at()))
        .or(() -> site.flatMap(Site::setting).map(setting -> expected(setting, weathering)));
  }

  /** The mildest air that a setting lets one expect, ISO 9223. */
  static Air expected(Choice<Site.Setting> setting, Weathering weathering) {
    Table.Row row = weathering.metals("settings").row("setting", setting.toString()).orElseThrow();
    Corrosivity least = Corrosivity.valueOf(row.word("class"));
    return new Air(least, "the mildest of a setting that is " + setting, setting.at());
  }

  static String unknown(Weathering weathering) {
    return weathering.lacks("the corrosivity of the air", "site", "corrosivity");
  }

  /** 1 for C1 to 6 for CX. */
  static int rank(Corrosivity corrosivity) {
    return corrosivity.ordinal() + 1;
  }

  int rank() {
    return rank(corrosivity);
  }

  String word() {
    return Choice.word(corrosivity);
  }
}
