package clampwise.rulebook.own;

import static clampwise.rulebook.own.OwnFolderCopy.GAP;
import static org.assertj.core.api.Assertions.assertThat;

import clampwise.rulebook.OwnRules;
import clampwise.rulebook.RuleCard;
import clampwise.source.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A mistake in an own rule is told in plain words, at its place, and costs no other rule. */
class OwnMistakesTest {
  @TempDir private Path home;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          : ModuleGap( | : ModulGap( | 19:8: no fact called ModulGap; expected a fact of docs/facts.md that is imported; nearest: ModuleGap
          clamps.ModuleGap | clamps.ModulGap | 3:8: an import of clampwise.facts.clamps.ModulGap; expected a fact of docs/facts.md; nearest: clampwise.facts.clamps.ModuleGap
          import clampwise.facts.clamps.ModuleGap | | 7:1: ModuleGap without its import; expected import clampwise.facts.clamps.ModuleGap above the rule
          judges("ModuleGap | judges("ModulGap | 10:12: no fact called ModulGap; expected a fact of docs/facts.md; nearest: ModuleGap
          (gapM < | (gapMm < | 19:18: no gapMm; expected something that ModuleGap holds (docs/facts.md); nearest: gapM
          0.015) | leastM, modul != neighbour) | 19:33: no modul; expected something that ModuleGap holds (docs/facts.md); nearest: module
          judges("ModuleGap | judges("MidClampFit | 10:12: @judges MidClampFit; expected the fact that the conditions ask about, $f : MidClampFit(...)
          0.015) | 0.015 | 20:1: then, which cannot stand here
          < 0.015 | < 15 mm | 19:28: mm, which cannot stand here
          < 0.015 | | 19:3: conditions that do not compile: Type mismatch: cannot convert from double to boolean; expected a condition that compares what the fact holds
          report.found(drools, $f); | System.exit(3); | 21:3: after then: System.exit(3);; expected one call, report.found(drools, $f);
          report.found(drools, $f); | | 20:5: nothing after then; expected one call, report.found(drools, $f);
          (drools, $f) | (drools, $g) | 21:3: $g, which no condition binds; expected the fact that was found, $f
          {neighbour} | {neighbor} | 13:13: no neighbor; expected something that ModuleGap holds (docs/facts.md); nearest: neighbour
          @measured("gapM") | @measured("gap") | 11:14: no gap; expected something that ModuleGap holds (docs/facts.md); nearest: gapM
          @measured("gapM") | | 12:4: @limit without @measured; expected both or none of them
          "15 mm" | "15" | 12:11: "15" without a unit
          "15 mm" | "15 kg" | 12:11: "15 kg", which is a mass
          @reason | @reeson | 14:4: @reeson; expected one of title, severity, judges, message, reason, remedy, basis, since, measured, limit, editions, follows; nearest: reason
          "warning" | "grave" | 9:14: severity grave; expected error, warning, note
          @severity("warning") | @severity(warning) | 9:4: @severity without a text; expected @severity("...")
          @since("1.0") | | 7:1: no @since; expected each of them between rule and when
          package own.clamps | package own.roof | 1:9: package own.roof; expected package own.clamps, after the folder
          global clampwise.rulebook.Report report | | 1:1: no line that names the report
          rule "own-gap-below-15-mm" | rule "own-gap" | 7:7: rule "own-gap"; expected the name of the file, own-gap-below-15-mm
          @title( | salience 10 @title( | 8:3: salience; expected a rule without such attributes
          when | wenn | 1:1: no line that begins with when
          """)
  void aMistakeIsToldAtItsPlace(String from, String to, String told) throws IOException {
    Path folder = OwnFolderCopy.below(home);
    String fresh = to == null ? "" : to;
    OwnFolderCopy.change(folder.resolve(GAP), from, fresh);

    OwnRules read = read(folder);

    assertThat(read.problems())
        .extracting(OwnMistakesTest::text)
        .anySatisfy(text -> assertThat(text).startsWith("our-rules/" + GAP + ":" + told));
    assertThat(read.rules().cards())
        .extracting(RuleCard::id)
        .containsExactlyInAnyOrder("own-fewer-than-six-clamps", "own-mid-clamp-not-in-stock");
  }

  private static String text(Problem problem) {
    String near = problem.nearest().map(word -> "; nearest: " + word).orElse("");
    return problem.at() + ": " + problem.found() + "; expected " + problem.expected() + near;
  }

  private static OwnRules read(Path folder) throws IOException {
    return OwnRulesReader.read(folder, "our-rules", Optional.empty()).orElseThrow();
  }

  @Test
  void theExampleIsRight() throws IOException {
    OwnRules read = read(OwnFolderCopy.EXAMPLE);

    assertThat(read.problems()).isEmpty();
    assertThat(read.rules().cards()).hasSize(3).allMatch(RuleCard::isOwn);
  }

  @Test
  void aRuleNeedsItsPageItsPrefixAndItsTopic() throws IOException {
    Path folder = OwnFolderCopy.below(home);
    Files.delete(folder.resolve("stock/own-mid-clamp-not-in-stock.md"));
    Files.move(folder.resolve(GAP), folder.resolve("clamps/module-gap-too-small.drl"));
    Files.writeString(folder.resolve("own-stray.drl"), "rule");

    assertThat(read(folder).problems())
        .extracting(OwnMistakesTest::text)
        .anyMatch(
            text -> text.contains("no page beside it; expected own-mid-clamp-not-in-stock.md"))
        .anyMatch(text -> text.contains("such as own-module-gap-too-small.drl"))
        .anyMatch(text -> text.contains("own-stray.drl:1:1: a rule outside a topic"));
  }

  @Test
  void oneNameInTwoTopicsAndATextThatIsNoTextAreTold() throws IOException {
    Path folder = OwnFolderCopy.below(home);
    Files.copy(folder.resolve(GAP), folder.resolve("stock/own-gap-below-15-mm.drl"));
    Files.write(folder.resolve("stock/own-latin.drl"), new byte[] {(byte) 0xE4, 10});

    assertThat(read(folder).problems())
        .extracting(OwnMistakesTest::text)
        .anyMatch(text -> text.contains("a name that our-rules/" + GAP + " has too"))
        .anyMatch(text -> text.contains("own-latin.drl:1:1: a file that is not UTF-8"));
  }

  @Test
  void aFolderWithoutRulesIsNone() throws IOException {
    assertThat(OwnRulesReader.read(home, "here", Optional.empty())).isEmpty();
    assertThat(OwnRulesReader.read(home.resolve("no"), "no", Optional.empty())).isEmpty();
  }

  @Test
  void aCommentHidesNothingAndIsNoMistake() throws IOException {
    Path folder = OwnFolderCopy.below(home);
    OwnFolderCopy.change(
        folder.resolve(GAP), "when\n", "when\n  // salience 10 /* \"\n  /* (gapMm */\n");

    assertThat(read(folder).problems()).isEmpty();
  }
}
