package clampwise.facts.install;

import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Fact;
import clampwise.facts.Question;
import clampwise.facts.layout.Layout;
import clampwise.finding.Subject;
import clampwise.job.Install;
import java.util.List;
import java.util.Optional;

/** All questions about the work on the roof. */
public final class InstallQuestions {

  public static final List<Question> ALL = List.of(InstallQuestions::ask);

  private InstallQuestions() {}

  /** Without a word on the topic, nothing of it is begun. */
  private static void ask(Layout layout, Limits limits, Answers answers) {
    Optional<Install> install = layout.job().install();
    if (install.isEmpty()) {
      unsaid(types(), layout, answers);
    } else {
      SiteWork work = new SiteWork(layout, install.get(), limits, answers);
      TorqueSheets.ask(work);
      ToolQuestions.ask(work);
      RecheckQuestions.ask(work);
      StepQuestions.ask(work);
      FallQuestions.ask(work);
    }
  }

  /** Gives one reason for all that cannot be answered without a word on the topic. */
  public static void unsaid(List<Class<? extends Fact>> types, Layout layout, Answers answers) {
    String reason =
        layout.job().unreadable().holds("install")
            ? "what the job says of the work on the roof could not be read"
            : "the job says nothing about the work on the roof (install)";
    for (Class<? extends Fact> type : types) {
      answers.missing(type, Subject.of("install"), reason, layout.job().at("install"));
    }
  }

  private static List<Class<? extends Fact>> types() {
    return List.of(
        StatedTorque.class,
        TorqueOnSheet.class,
        UsualTorque.class,
        TorqueLog.class,
        ToolCertificate.class,
        SetScrewTool.class,
        SetScrewRecheck.class,
        RetorqueShare.class,
        RetorqueInterval.class,
        StepTaken.class,
        StepOrder.class,
        FallAtWork.class,
        FallInLaterYears.class,
        SkylightGuard.class,
        ModuleLift.class);
  }
}
