package clampwise.facts.durability;

import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.Site;
import clampwise.job.Site.Corrosivity;
import clampwise.units.Unit;
import java.util.Optional;

/** Holds the stated class of the air against the setting, where both are written. */
final class Settings {

  private Settings() {}

  static void ask(Weathering weathering) {
    Optional<Site> site = weathering.job().site();
    Optional<Choice<Corrosivity>> stated = site.flatMap(Site::corrosivity);
    Optional<Choice<Site.Setting>> setting = site.flatMap(Site::setting);
    if (stated.isPresent() && setting.isPresent()) {
      Air least = Air.expected(setting.get(), weathering);
      weathering.add(
          new SettingClass(
              Subject.of("site").part("corrosivity"),
              stated.get().at(),
              Unit.NUMBER,
              stated.get().toString(),
              Air.rank(stated.get().value()),
              setting.get().toString(),
              least.word(),
              least.rank()));
    }
  }
}
