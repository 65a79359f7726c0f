package clampwise.facts.install;

import clampwise.calc.trail.Table;
import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.FieldLayout;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.Count;
import clampwise.job.Install.Joint;
import clampwise.job.Quantity.Torque;
import clampwise.job.Text;
import clampwise.units.Unit;
import java.util.List;
import java.util.Optional;

/** Asks whether the crew's sheet has the right torque for each part, and whether all are logged. */
record TorqueSheets(SiteWork work, List<UsedPart> parts) {

  private static final double STEPS = 1e9;

  static void ask(SiteWork work) {
    TorqueSheets sheets = new TorqueSheets(work, UsedParts.of(work));
    if (work.install().torques().isEmpty()) {
      sheets.unsaid();
    } else {
      sheets.parts.forEach(sheets::judge);
    }
    sheets.askLog();
  }

  private void unsaid() {
    String reason = work.lacks("the torques of the crew's sheet", "torques");
    for (Class<? extends Fact> type :
        List.of(TorqueOnSheet.class, StatedTorque.class, UsualTorque.class)) {
      work.missing(type, SiteWork.INSTALL.part("torques"), reason);
    }
  }

  private static Subject subject(UsedPart part) {
    return Subject.of("install.torques", part.word());
  }

  private void judge(UsedPart part) {
    Optional<Torque> stated = work.install().torques().find(part.name());
    if (stated.isEmpty() && work.isLost("torques", part.name())) {
      work.missing(
          TorqueOnSheet.class, subject(part), work.lacks("a torque", "torques", part.name()));
      return;
    }
    Torque at = stated.orElseGet(() -> work.install().torques().all().iterator().next().value());
    work.answers()
        .add(
            new TorqueOnSheet(
                subject(part), at.at(), Unit.NUMBER, part.word(), stated.isPresent()));
    stated.ifPresent(torque -> compare(part, torque));
  }

  private void compare(UsedPart part, Torque stated) {
    if (part.maker().isPresent()) {
      work.answers().add(stated(part, stated, part.maker().get()));
      return;
    }
    String what = "the torque of " + part.word();
    String reason =
        work.layout()
            .job()
            .unreadable()
            .missing(what, "parts", part.shelf(), part.name(), "torque");
    work.missing(StatedTorque.class, subject(part), reason);
    Table table = work.tables().get("torques");
    table
        .row("joint", Choice.word(part.joint()))
        .ifPresent(row -> work.answers().add(usual(part, stated, row, table)));
  }

  private StatedTorque stated(UsedPart part, Torque stated, Torque maker) {
    Limit most = work.limits().get("torque-deviation-most");
    double off = Math.abs(stated.nM() - maker.nM()) / maker.nM();
    return new StatedTorque(
        subject(part),
        stated.at(),
        stated.unit(),
        part.word(),
        stated.nM(),
        maker.nM(),
        Math.rint(off * STEPS) / STEPS,
        most.si(),
        Optional.of(most));
  }

  private static UsualTorque usual(UsedPart part, Torque stated, Table.Row row, Table table) {
    double least = row.number("least");
    double most = row.number("most");
    double nearest = stated.nM() < (least + most) / 2 ? least : most;
    return new UsualTorque(
        subject(part),
        stated.at(),
        stated.unit(),
        part.word(),
        stated.nM(),
        least,
        most,
        nearest,
        StepQuestions.from(table, row));
  }

  private void askLog() {
    if (work.install().torqueLog().isEmpty()) {
      String reason = work.lacks("the torque log", "torque-log");
      work.missing(TorqueLog.class, SiteWork.INSTALL.part("torque-log"), reason);
      return;
    }
    Optional<String> unknown =
        work.layout().fields().stream().flatMap(f -> f.attachmentsUnknown().stream()).findFirst();
    for (UsedPart part : parts) {
      if (part.joint() != Joint.BONDING_PARTS) {
        askLog(part, unknown);
      }
    }
  }

  private void askLog(UsedPart part, Optional<String> unknown) {
    Subject subject = Subject.of("install.torque-log", part.word());
    boolean lost = work.isLost("torque-log", part.name());
    if (unknown.isPresent() || lost) {
      String reason = unknown.orElse("a number of the torque log could not be read");
      work.missing(TorqueLog.class, subject, reason);
      return;
    }
    Optional<Count> logged = work.install().torqueLog().find(part.name());
    int entries = logged.map(Count::value).orElse(0);
    int placed = placed(part);
    Count at = logged.orElseGet(() -> work.install().torqueLog().all().iterator().next().value());
    work.answers()
        .add(
            new TorqueLog(
                subject,
                at.at(),
                Unit.NUMBER,
                part.word(),
                entries,
                placed,
                Math.max(0, placed - entries),
                0));
  }

  private int placed(UsedPart part) {
    int placed = 0;
    for (FieldLayout field : work.layout().fields()) {
      for (Attachment attachment : field.attachments()) {
        Optional<Text> name =
            part.joint() == Joint.SET_SCREWS ? attachment.part() : attachment.clamp();
        placed += name.filter(used -> used.value().equals(part.name())).isPresent() ? 1 : 0;
      }
    }
    return placed;
  }
}
