package clampwise.facts.install;

import clampwise.calc.trail.Table;
import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.facts.layout.StandIns;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.Named;
import clampwise.job.Quantity.Torque;
import clampwise.units.Unit;
import java.util.List;
import java.util.Optional;

/** Asks whether the crew's sheet has the right torque for each part. */
record TorqueSheets(SiteWork work, List<UsedPart> parts, StandIns standIns) {

  private static final double STEPS = 1e9;

  static void ask(SiteWork work) {
    List<UsedPart> parts = UsedParts.of(work);
    TorqueSheets sheets =
        new TorqueSheets(work, parts, UsedParts.standIns(work, parts, work.install().torques()));
    if (work.install().torques().isEmpty()) {
      sheets.unsaid();
    } else {
      sheets.parts.forEach(sheets::judge);
    }
    TorqueLogs.ask(work, parts);
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
    work.answers().add(onSheet(part, stated));
    stated.ifPresent(torque -> compare(part, torque));
  }

  /** Where it is, else where another one stands in its place, else where the sheet begins. */
  private TorqueOnSheet onSheet(UsedPart part, Optional<Torque> stated) {
    Named<Torque> sheet = work.install().torques();
    Torque at =
        stated
            .or(() -> standIns.of(part.name()).flatMap(sheet::find))
            .orElseGet(() -> sheet.all().iterator().next().value());
    return new TorqueOnSheet(
        subject(part),
        at.at(),
        Unit.NUMBER,
        part.word(),
        stated.isPresent(),
        standIns.listed(part.name()),
        standIns.inPlace(part.name()),
        standIns.drawnAt(part.name()));
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
}
