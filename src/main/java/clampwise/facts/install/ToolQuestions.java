package clampwise.facts.install;

import clampwise.catalogue.Limit;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.Day;
import clampwise.job.Install.Joint;
import clampwise.job.Install.Tool;
import clampwise.job.Named;
import clampwise.units.Unit;
import java.util.Collection;
import java.util.Optional;

/** Asks of the tools whether their certificates hold, and what tightens set screws. */
record ToolQuestions(SiteWork work) {

  private static final Subject TOOLS = SiteWork.INSTALL.part("tools");

  static void ask(SiteWork work) {
    if (work.install().tools().isEmpty()) {
      String reason = work.lacks("what tightens the screws", "tools");
      work.missing(ToolCertificate.class, TOOLS, reason);
      work.missing(SetScrewTool.class, TOOLS, reason);
      return;
    }
    ToolQuestions questions = new ToolQuestions(work);
    questions.tellUnnamed(work.install().tools().all());
    for (Named.Item<Tool> item : work.install().tools().all()) {
      questions.askCertificate(item);
      questions.askSetScrews(item);
    }
  }

  /** A list of tools that leaves out the one that matters says nothing of it. */
  private void tellUnnamed(Collection<Named.Item<Tool>> tools) {
    boolean torque = tools.stream().anyMatch(item -> item.value().kind().value().measures());
    if (!torque) {
      work.missing(ToolCertificate.class, TOOLS, "no torque tool is named (install: tools)");
    }
    boolean used = UsedParts.of(work).stream().anyMatch(part -> part.joint() == Joint.SET_SCREWS);
    boolean named =
        tools.stream()
            .flatMap(item -> item.value().tightens().stream())
            .anyMatch(joint -> joint.value() == Joint.SET_SCREWS);
    if (used && !named) {
      work.missing(
          SetScrewTool.class,
          TOOLS,
          "no tool is named that tightens the set screws (install: tools)");
    }
  }

  private static Subject subject(Named.Item<Tool> item) {
    return Subject.of("install.tools." + item.name().value());
  }

  private void askCertificate(Named.Item<Tool> item) {
    if (!item.value().kind().value().measures()) {
      return;
    }
    Optional<Day> last = work.install().ends().or(work.install()::begins);
    Optional<Day> certified = item.value().certified();
    if (last.isEmpty()) {
      missing(item, work.lacks("the day of the work", "begins"));
    } else if (certified.isEmpty()) {
      String what = "the date of the certificate of tool " + item.name().value();
      missing(item, work.lacks(what, "tools", item.name().value(), "certified"));
    } else if (last.get().daysUntil(certified.get()) > 0) {
      missing(item, "the certificate of tool " + item.name() + " is dated after the work");
    } else {
      work.answers().add(certificate(item, certified.get(), last.get()));
    }
  }

  private void missing(Named.Item<Tool> item, String reason) {
    work.missing(ToolCertificate.class, subject(item), reason);
  }

  private ToolCertificate certificate(Named.Item<Tool> item, Day certified, Day last) {
    Limit most = work.limits().get("certificate-months-most");
    return new ToolCertificate(
        subject(item),
        certified.at(),
        Unit.NUMBER,
        item.name().value(),
        certified.toString(),
        last.toString(),
        certified.ageOn(last),
        (int) certified.monthsUntil(last),
        (int) most.si(),
        Optional.of(most));
  }

  private void askSetScrews(Named.Item<Tool> item) {
    Tool tool = item.value();
    for (Choice<Joint> joint : tool.tightens()) {
      if (joint.value() == Joint.SET_SCREWS) {
        work.answers()
            .add(
                new SetScrewTool(
                    subject(item),
                    joint.at(),
                    Unit.NUMBER,
                    item.name().value(),
                    tool.kind().toString().replace('-', ' '),
                    tool.kind().value().measures()));
      }
    }
  }
}
