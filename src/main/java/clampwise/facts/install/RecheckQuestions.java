package clampwise.facts.install;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.job.Count;
import clampwise.job.Flag;
import clampwise.job.Install.Joint;
import clampwise.job.Install.Retorque;
import clampwise.job.Quantity.Factor;
import clampwise.units.Unit;
import clampwise.units.Units;
import java.util.Optional;

/** Asks what is checked again: set screws at once, module clamps in later years. */
record RecheckQuestions(SiteWork work) {

  private static final Subject SET_SCREWS = SiteWork.INSTALL.part("set screws");
  private static final Subject RETORQUE = SiteWork.INSTALL.part("retorque");

  static void ask(SiteWork work) {
    RecheckQuestions questions = new RecheckQuestions(work);
    questions.askSetScrews();
    questions.askShare();
    questions.askInterval();
  }

  /** Only seam clamps have set screws. */
  private void askSetScrews() {
    boolean any = UsedParts.of(work).stream().anyMatch(part -> part.joint() == Joint.SET_SCREWS);
    Optional<Flag> flag = work.install().setScrewsRechecked();
    if (any && flag.isPresent()) {
      Flag written = flag.get();
      work.answers()
          .add(new SetScrewRecheck(SET_SCREWS, written.at(), Unit.NUMBER, written.value()));
    } else if (any) {
      String what = "whether a sample of the set screws is checked again";
      work.missing(SetScrewRecheck.class, SET_SCREWS, work.lacks(what, "set-screws-rechecked"));
    }
  }

  private void askShare() {
    Optional<Factor> clamps = work.install().retorque().flatMap(Retorque::clamps);
    if (clamps.isEmpty()) {
      missing(RetorqueShare.class, "how many clamps are checked again in later years", "clamps");
      return;
    }
    Limit least = work.limits().get("retorque-share-least");
    work.answers()
        .add(
            new RetorqueShare(
                RETORQUE.part("clamps"),
                clamps.get().at(),
                Units.PERCENT,
                clamps.get().value(),
                least.si(),
                Optional.of(least)));
  }

  private void askInterval() {
    Optional<Count> months = work.install().retorque().flatMap(Retorque::everyMonths);
    if (months.isEmpty()) {
      missing(RetorqueInterval.class, "how often the torques are checked again", "every-months");
      return;
    }
    Limit most = work.limits().get("retorque-months-most");
    work.answers()
        .add(
            new RetorqueInterval(
                RETORQUE.part("interval"),
                months.get().at(),
                Unit.NUMBER,
                months.get().value(),
                (int) most.si(),
                Optional.of(most)));
  }

  private void missing(Class<? extends Fact> type, String what, String key) {
    work.missing(type, RETORQUE, work.lacks(what, "retorque", key));
  }
}
