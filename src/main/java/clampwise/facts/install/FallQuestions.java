package clampwise.facts.install;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.facts.layout.Obstacle;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Building;
import clampwise.job.Choice;
import clampwise.job.Flag;
import clampwise.job.Install.FallProtection;
import clampwise.job.Install.Lift;
import clampwise.job.Install.Means;
import clampwise.job.Obstruction;
import clampwise.job.Quantity.Length;
import clampwise.units.Unit;
import java.util.List;
import java.util.Optional;

/** Asks how people are kept from falling, and what brings the modules up. */
record FallQuestions(SiteWork work, FallProtection plan) {

  private static final Subject FALLS = SiteWork.INSTALL.part("fall-protection");

  static void ask(SiteWork work) {
    Optional<FallProtection> plan = work.install().fallProtection();
    if (plan.isPresent()) {
      FallQuestions questions = new FallQuestions(work, plan.get());
      questions.askWork();
      questions.askMaintenance();
      questions.askSkylights();
      questions.askLift();
    } else {
      String reason = work.lacks("how people are kept from falling", "fall-protection");
      for (Class<? extends Fact> type :
          List.of(
              FallAtWork.class, FallInLaterYears.class, SkylightGuard.class, ModuleLift.class)) {
        work.missing(type, FALLS, reason);
      }
    }
  }

  private void askWork() {
    Optional<Length> eave = eave();
    if (plan.work().isEmpty()) {
      missing(FallAtWork.class, "what holds people back at work", "work");
    } else if (eave.isEmpty()) {
      work.missing(FallAtWork.class, FALLS, noEave());
    } else {
      Choice<Means> means = plan.work().get();
      Limit from = work.limits().get("fall-height-work");
      work.answers()
          .add(
              new FallAtWork(
                  FALLS.part("work"),
                  means.at(),
                  eave.get().unit(),
                  Snap.m(eave.get().m()),
                  Snap.m(from.si()),
                  means.value() != Means.NONE,
                  Optional.of(from)));
    }
  }

  private void askMaintenance() {
    Optional<Length> eave = eave();
    if (plan.maintenance().isEmpty()) {
      missing(FallInLaterYears.class, "what holds people back in later years", "maintenance");
    } else if (eave.isEmpty()) {
      work.missing(FallInLaterYears.class, FALLS, noEave());
    } else {
      Choice<Means> means = plan.maintenance().get();
      Limit from = work.limits().get("fall-height-maintenance");
      work.answers()
          .add(
              new FallInLaterYears(
                  FALLS.part("maintenance"),
                  means.at(),
                  eave.get().unit(),
                  Snap.m(eave.get().m()),
                  Snap.m(from.si()),
                  means.value() != Means.NONE,
                  Optional.of(from)));
    }
  }

  private Optional<Length> eave() {
    return work.layout().job().building().flatMap(Building::eaveHeight);
  }

  private String noEave() {
    String what = "the height of the eave";
    return work.layout().job().unreadable().missing(what, "building", "eave-height");
  }

  private void askSkylights() {
    for (PlaneLayout plane : work.layout().planes()) {
      for (Obstacle obstacle : plane.obstacles()) {
        Obstruction.Kind kind = obstacle.obstruction().kind().value();
        if (kind == Obstruction.Kind.SKYLIGHT || kind == Obstruction.Kind.TRANSLUCENT_PANEL) {
          askSkylight(obstacle.name() + " on plane " + plane.name());
        }
      }
    }
  }

  private void askSkylight(String name) {
    Optional<Flag> guarded = plan.skylightsGuarded();
    if (guarded.isPresent()) {
      Subject subject = FALLS.part(name);
      Flag flag = guarded.get();
      work.answers().add(new SkylightGuard(subject, flag.at(), Unit.NUMBER, name, flag.value()));
    } else {
      missing(SkylightGuard.class, "whether skylights are guarded", "skylights-guarded");
    }
  }

  private void askLift() {
    Optional<Choice<Lift>> lift = plan.modulesLiftedBy();
    if (lift.isPresent()) {
      Choice<Lift> by = lift.get();
      Subject subject = FALLS.part("modules");
      boolean ladder = by.value() == Lift.LADDER;
      work.answers().add(new ModuleLift(subject, by.at(), Unit.NUMBER, by.toString(), ladder));
    } else {
      missing(ModuleLift.class, "what brings the modules up", "modules-lifted-by");
    }
  }

  private void missing(Class<? extends Fact> type, String what, String key) {
    work.missing(type, FALLS, work.lacks(what, "fall-protection", key));
  }
}
