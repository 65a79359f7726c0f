package clampwise.facts.roof;

import clampwise.job.Choice;
import clampwise.job.Metal;
import clampwise.job.Tested;
import clampwise.units.Unit;
import java.util.List;
import java.util.stream.Collectors;

/** Asks of each part whether a test of it was on the metal of the sheet. */
final class MetalsTested extends PartQuestion {

  MetalsTested() {
    super(MetalTested.class);
  }

  @Override
  void ask(PartUse use, Asked asked) {
    if (!use.isMadeForIt()) {
      missing(use, asked, TestReasons.notMadeForIt(use), use.name().at());
    } else if (use.part().tested().isEmpty()) {
      missing(use, asked, TestReasons.noTest(use), use.partAt());
    } else if (use.panel().metal().isEmpty()) {
      missing(use, asked, TestReasons.noMetal(use), use.panelAt());
    } else {
      asked.answers().add(fact(use, asked));
    }
  }

  private static MetalTested fact(PartUse use, Asked asked) {
    Metal metal = use.panel().metal().orElseThrow().value();
    List<Tested> tests = use.testsOfProfile();
    return new MetalTested(
        use.subject(),
        use.cause(),
        use.name().at(),
        Unit.MILLIMETRE,
        use.name().value(),
        use.plane().panelName(),
        words(metal),
        metals(tests),
        tests.stream().anyMatch(row -> row.metal().value() == metal),
        asked.fitting(use));
  }

  private static String metals(List<Tested> tests) {
    String metals =
        tests.stream()
            .map(row -> words(row.metal().value()))
            .distinct()
            .collect(Collectors.joining(", "));
    return metals.isEmpty() ? "no metal with this profile" : metals;
  }

  private static String words(Metal metal) {
    return Choice.word(metal).replace('-', ' ');
  }
}
