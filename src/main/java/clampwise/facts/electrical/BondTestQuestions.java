package clampwise.facts.electrical;

import clampwise.catalogue.Limit;
import clampwise.finding.Subject;
import clampwise.job.Electrical.BondTest;
import clampwise.units.Unit;
import java.util.Optional;

/** Asks whether the bonds from frame to lug are tested, and what the test gave. */
final class BondTestQuestions {

  private static final Subject TEST = Wiring.ELECTRICAL.part("bond test");

  private BondTestQuestions() {}

  static void ask(Wiring wiring) {
    Optional<BondTest> test = wiring.electrical().bondTest();
    test.flatMap(BondTest::onTestSheet)
        .ifPresentOrElse(
            flag ->
                wiring.answers().add(new BondTestAsked(TEST, flag.at(), Unit.NUMBER, flag.value())),
            () -> missing(wiring));
    Limit most = wiring.limits().get("bond-resistance-most");
    test.flatMap(BondTest::resistance)
        .ifPresent(
            ohm ->
                wiring
                    .answers()
                    .add(
                        new BondResistance(
                            TEST, ohm.at(), ohm.unit(), ohm.ohm(), most.si(), Optional.of(most))));
  }

  private static void missing(Wiring wiring) {
    String what = "whether the bonds from frame to lug are tested";
    wiring.missing(BondTestAsked.class, TEST, wiring.lacks(what, "bond-test", "on-test-sheet"));
  }
}
