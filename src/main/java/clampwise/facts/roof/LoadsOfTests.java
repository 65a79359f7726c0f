package clampwise.facts.roof;

import clampwise.job.Choice;
import clampwise.job.Tested;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Asks of each test that applies to the roof whether its loads can be used. */
final class LoadsOfTests extends PartQuestion {

  LoadsOfTests() {
    super(LoadsStated.class);
  }

  @Override
  void ask(PartUse use, Asked asked) {
    if (areLost(use, asked)) {
      missing(use, asked, "not all tests of " + use.name() + " could be read", use.partAt());
      return;
    }
    if (use.part().tested().isEmpty()) {
      missing(use, asked, TestReasons.noTest(use), use.partAt());
    }
    Optional<FactorOfTest> factor = FactorOfTest.of(asked.layout().job());
    if (factor.isEmpty()) {
      missing(use, asked, "the method of the loads could not be read", use.partAt());
      return;
    }
    List<Tested> apply = use.isMadeForIt() ? use.testsThatApply() : List.of();
    List<Tested> all = use.part().tested();
    for (int n = 0; n < all.size(); n++) {
      if (apply.contains(all.get(n)) && hasLoad(all.get(n))) {
        asked.answers().add(fact(use, all.get(n), "test " + (n + 1), factor.get()));
      }
    }
  }

  private static boolean areLost(PartUse use, Asked asked) {
    return Stream.of("seam-clamps", "rib-brackets")
        .anyMatch(
            kind ->
                asked
                    .layout()
                    .job()
                    .unreadable()
                    .touches("parts", kind, use.name().value(), "tested"));
  }

  private static boolean hasLoad(Tested row) {
    return row.up().isPresent() || row.down().isPresent() || row.along().isPresent();
  }

  private static LoadsStated fact(PartUse use, Tested row, String test, FactorOfTest factor) {
    return new LoadsStated(
        use.subject().part(test),
        use.cause().part(test),
        at(use, row),
        Unit.MILLIMETRE,
        use.name().value(),
        row.report().map(report -> "test " + report.value()).orElse(test),
        row.loadsAre().map(Choice::toString).orElse("not stated"),
        factor.of(row).isPresent(),
        factor.key(),
        factor.gives(row));
  }

  /** In the job where the part is written there, else at the name of the part. */
  private static Span at(PartUse use, Tested row) {
    boolean inJob = !use.partAt().equals(use.name().at());
    Span ofRow = row.loadsAre().map(Choice::at).orElse(row.metal().at());
    return inJob ? ofRow : use.name().at();
  }
}
