package clampwise.facts.roof;

import clampwise.job.Choice;
import clampwise.job.Substrate;
import clampwise.job.Tested;
import clampwise.units.Unit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Asks of each part whether a test of it was on the substrate of the sheet. */
final class SubstratesTested extends PartQuestion {

  private static final String ANY = "any substrate";

  SubstratesTested() {
    super(SubstrateTested.class);
  }

  @Override
  void ask(PartUse use, Asked asked) {
    List<Tested> tests = use.testsThatApply();
    if (!use.isMadeForIt()) {
      missing(use, asked, TestReasons.notMadeForIt(use), use.name().at());
    } else if (use.part().tested().isEmpty()) {
      missing(use, asked, TestReasons.noTest(use), use.partAt());
    } else if (use.panel().metal().isEmpty()) {
      missing(use, asked, TestReasons.noMetal(use), use.panelAt());
    } else if (tests.isEmpty()) {
      String reason = use.name() + " has no test on this metal to compare the substrate with";
      missing(use, asked, reason, use.partAt());
    } else {
      answer(use, tests, asked);
    }
  }

  private void answer(PartUse use, List<Tested> tests, Asked asked) {
    boolean any = tests.stream().anyMatch(row -> row.substrates().isEmpty());
    Optional<Substrate> substrate = use.panel().substrate().map(Choice::value);
    if (substrate.isEmpty() && !any) {
      String reason = use.ofPanel("what " + use.plane().panelName() + " rests on", "substrate");
      missing(use, asked, reason, use.panelAt());
    } else {
      boolean tested = any || tests.stream().anyMatch(row -> names(row, substrate));
      asked.answers().add(fact(use, any ? ANY : testedOn(tests), tested, asked));
    }
  }

  private static boolean names(Tested row, Optional<Substrate> substrate) {
    return row.substrates().stream().anyMatch(each -> substrate.equals(Optional.of(each.value())));
  }

  private static SubstrateTested fact(PartUse use, String testedOn, boolean tested, Asked asked) {
    return new SubstrateTested(
        use.subject(),
        use.cause(),
        use.name().at(),
        Unit.MILLIMETRE,
        use.name().value(),
        use.plane().panelName(),
        use.panel().substrate().map(s -> words(s.value())).orElse(ANY),
        testedOn,
        tested,
        tested ? Optional.empty() : asked.fitting(use));
  }

  private static String testedOn(List<Tested> tests) {
    return tests.stream()
        .flatMap(row -> row.substrates().stream())
        .map(each -> words(each.value()))
        .distinct()
        .collect(Collectors.joining(", "));
  }

  private static String words(Substrate substrate) {
    return Choice.word(substrate).replace('-', ' ');
  }
}
