package clampwise.facts.install;

import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.StandIns;
import clampwise.finding.Subject;
import clampwise.job.Count;
import clampwise.job.Install.Joint;
import clampwise.job.Named;
import clampwise.job.Text;
import clampwise.units.Unit;
import java.util.List;
import java.util.Optional;

/** Asks whether the torque log has all clamps of the layout. */
record TorqueLogs(SiteWork work, StandIns standIns) {

  static void ask(SiteWork work, List<UsedPart> parts) {
    if (work.install().torqueLog().isEmpty()) {
      String reason = work.lacks("the torque log", "torque-log");
      work.missing(TorqueLog.class, SiteWork.INSTALL.part("torque-log"), reason);
      return;
    }
    Optional<String> unknown =
        work.layout().fields().stream().flatMap(f -> f.attachmentsUnknown().stream()).findFirst();
    List<UsedPart> clamps =
        parts.stream().filter(part -> part.joint() != Joint.BONDING_PARTS).toList();
    TorqueLogs logs =
        new TorqueLogs(work, UsedParts.standIns(work, clamps, work.install().torqueLog()));
    clamps.forEach(part -> logs.ask(part, unknown));
  }

  private void ask(UsedPart part, Optional<String> unknown) {
    Subject subject = Subject.of("install.torque-log", part.word());
    boolean lost = work.isLost("torque-log", part.name());
    if (unknown.isPresent() || lost) {
      String reason = unknown.orElse("a number of the torque log could not be read");
      work.missing(TorqueLog.class, subject, reason);
      return;
    }
    work.answers().add(log(subject, part));
  }

  private TorqueLog log(Subject subject, UsedPart part) {
    Named<Count> log = work.install().torqueLog();
    Optional<Count> logged = log.find(part.name());
    int entries = logged.map(Count::value).orElse(0);
    int placed = placed(part);
    Count at =
        logged
            .or(() -> standIns.of(part.name()).flatMap(log::find))
            .orElseGet(() -> log.all().iterator().next().value());
    return new TorqueLog(
        subject,
        at.at(),
        Unit.NUMBER,
        part.word(),
        entries,
        placed,
        Math.max(0, placed - entries),
        0,
        standIns.listed(part.name()),
        standIns.inPlace(part.name()),
        standIns.drawnAt(part.name()));
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
