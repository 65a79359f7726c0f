package clampwise.facts.weight;

import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Subjects;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Flag;
import clampwise.job.Obstruction;
import clampwise.job.Plane.RetentionBase;
import clampwise.job.Plane.SnowRetention;
import clampwise.units.Unit;
import java.util.Optional;

/** Asks what snow retention is fixed to, and who has counted the snow behind it. */
final class SnowRetentions {

  private final PlaneLayout plane;
  private final Answers answers;
  private final Subject subject;

  private SnowRetentions(PlaneLayout plane, Answers answers) {
    this.plane = plane;
    this.answers = answers;
    this.subject = Subjects.plane(plane.name()).part("snow retention");
  }

  static void ask(Layout layout, Limits limits, Answers answers) {
    layout.planes().stream()
        .filter(plane -> !plane.fields().isEmpty())
        .forEach(plane -> new SnowRetentions(plane, answers).ask());
  }

  private void ask() {
    plane.plane().snowRetention().ifPresentOrElse(this::judge, this::drawnOnly);
  }

  /** Retention that stands among the obstructions and of which nothing more is said. */
  private void drawnOnly() {
    plane.obstacles().stream()
        .filter(o -> o.obstruction().kind().value() == Obstruction.Kind.SNOW_RETENTION)
        .findFirst()
        .ifPresent(
            drawn -> {
              String reason = missing("what snow retention " + drawn.name() + " is fixed to");
              answers.missing(RetentionPlace.class, subject, reason, drawn.at());
              answers.missing(RetainedSnow.class, subject, reason, drawn.at());
            });
  }

  private String missing(String what) {
    return plane.reading().unreadable().missing(what, "planes", plane.name(), "snow-retention");
  }

  private void judge(SnowRetention retention) {
    boolean onModules = retention.on().value() == RetentionBase.MODULES;
    answers.add(
        new RetentionPlace(
            subject, subject, retention.on().at(), Unit.NUMBER, plane.name(), onModules));
    if (!onModules) {
      snow(retention, retention.inLoads());
    }
  }

  private void snow(SnowRetention retention, Optional<Flag> included) {
    if (included.isEmpty()) {
      String reason =
          missing("whether the loads include the snow held back on plane " + plane.name());
      answers.missing(RetainedSnow.class, subject, reason, retention.on().at());
    } else {
      answers.add(
          new RetainedSnow(
              subject,
              subject,
              included.get().at(),
              Unit.NUMBER,
              plane.name(),
              retention.on().toString(),
              included.get().value()));
    }
  }
}
