package clampwise.catalogue;

import clampwise.job.Choice;
import clampwise.job.Editions;
import clampwise.job.ElectricalCode;
import clampwise.job.Fire;
import clampwise.job.Job;
import clampwise.job.Site;
import clampwise.job.Text;
import clampwise.source.Problem;
import clampwise.source.Problems;
import java.util.Optional;

/** Finds misspelt codes of the site, which may be written as on the drawings. */
final class EditionNames {

  private EditionNames() {}

  static void check(Job job, Problems problems) {
    Optional<Site.Codes> codes = job.site().flatMap(Site::codes);
    Optional<Text> electrical = codes.flatMap(Site.Codes::electrical);
    if (electrical.isPresent()) {
      check("electrical", electrical.get(), ElectricalCode.values(), problems);
    }
    Optional<Text> fire = codes.flatMap(Site.Codes::fire);
    if (fire.isPresent()) {
      check("fire", fire.get(), Fire.RuleSet.values(), problems);
    }
  }

  private static <E extends Enum<E>> void check(
      String kind, Text written, E[] codes, Problems problems) {
    Optional<String> meant = Editions.meant(codes, written.value());
    if (meant.isPresent()) {
      String found = "no edition of a code named \"" + written.value() + "\"";
      problems.add(new Problem(written.at(), found, expected(kind, codes), meant));
    }
  }

  private static <E extends Enum<E>> String expected(String kind, E[] codes) {
    StringBuilder text = new StringBuilder("the code in force; the " + kind + " codes known here");
    for (int i = 0; i < codes.length; i++) {
      text.append(i == 0 ? " are " : ", ").append(Choice.word(codes[i]));
    }
    return text.toString();
  }
}
