package clampwise.facts.weight;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.Snap;
import clampwise.calc.statics.DeadLoadScreen;
import clampwise.catalogue.Limit;
import clampwise.facts.weight.WeighedField.Heaviest;
import clampwise.finding.Subject;
import clampwise.job.Building;
import clampwise.job.Quantity.Pressure;
import java.util.Optional;

/** Screens the roof members under each field for the weight that is added. */
final class MemberIncreases {

  private final WeighedField asked;
  private final Members members;

  private MemberIncreases(WeighedField asked) {
    this.asked = asked;
    this.members = Members.of(asked.layout());
  }

  static void ask(WeighedField asked) {
    new MemberIncreases(asked).ask();
  }

  private void ask() {
    Optional<Pressure> dead = members.building().flatMap(Building::roofDeadLoad);
    Optional<Pressure> live = members.building().flatMap(Building::roofDesignLoad);
    if (members.checked().isEmpty() || members.isCollateralLost()) {
      missing("what is said of the building's members could not be read");
    } else if (dead.isPresent() && live.isPresent() && dead.get().pa() + live.get().pa() > 0) {
      ask(dead.get(), live.get());
    } else if (!members.isCheckEnough()) {
      missing(Members.UNKNOWN);
    }
  }

  private void ask(Pressure dead, Pressure live) {
    Outcome<Heaviest> heaviest = asked.heaviest();
    if (heaviest instanceof Result<Heaviest> known) {
      double collateralPa =
          members.building().flatMap(Building::collateralLoad).map(Pressure::pa).orElse(0.0);
      double addedPa = known.value().loadPa();
      asked
          .answers()
          .add(fact(new DeadLoadScreen(dead.pa() + collateralPa, live.pa(), addedPa), live));
    } else if (heaviest instanceof NotApplicable<Heaviest> unknown) {
      asked.missing(MemberIncrease.class, unknown.reason(), asked.moduleAt());
    }
  }

  private MemberIncrease fact(DeadLoadScreen screen, Pressure live) {
    Limit most = asked.limits().get("gravity-increase-most");
    return new MemberIncrease(
        asked.subject().part("members"),
        Subject.of("building", "members"),
        live.at(),
        live.unit(),
        asked.field().name(),
        members.isCheckEnough(),
        screen.addedPa(),
        screen.deadPa() + screen.livePa(),
        Snap.m(screen.increase()),
        most.si(),
        Optional.of(most));
  }

  private void missing(String reason) {
    asked.missing(MemberIncrease.class, reason, members.at());
  }
}
