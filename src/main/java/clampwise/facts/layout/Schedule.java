package clampwise.facts.layout;

import clampwise.job.Attach;
import clampwise.job.Count;
import clampwise.job.Field;
import clampwise.job.Named;
import clampwise.source.Problem;
import clampwise.source.Problems;
import clampwise.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the attachment schedule of a field, in whichever way it is written. */
final class Schedule {

  private final Named.Item<Field> field;
  private final LineMap lines;
  private final Ground ground;
  private final EdgeRules rules;
  private final Problems problems;

  Schedule(
      Named.Item<Field> field, LineMap lines, Ground ground, EdgeRules rules, Problems problems) {
    this.field = field;
    this.lines = lines;
    this.ground = ground;
    this.rules = rules;
    this.problems = problems;
  }

  Scheduled read() {
    Optional<Attach> attach = field.value().attach();
    if (attach.isEmpty() || ways(attach.get()).isEmpty()) {
      return Scheduled.unknown("field " + field.name() + " has no attachment schedule (attach)");
    }
    reportSecondWay(ways(attach.get()));
    if (!attach.get().points().isEmpty()) {
      return Scheduled.of(PointSchedule.read(field.name().value(), attach.get().points(), lines));
    }
    if (ground.seams().isEmpty()) {
      return Scheduled.unknown(ground.seamsUnknown());
    }
    return bySeams(attach.get());
  }

  private Scheduled bySeams(Attach attach) {
    if (!attach.lines().isEmpty()) {
      return Scheduled.of(
          new LineSchedule(field.name().value(), lines, ground.seams(), problems).read(attach));
    }
    if (attach.perEdge().isPresent()) {
      return Scheduled.of(
          new EdgeSchedule(field, lines, ground.seams(), rules).read(attach.perEdge().get()));
    }
    return new PatternSchedule(field.name(), lines, ground, problems).read(attach);
  }

  /** Where each way of scheduling that is used was written, in the order they are preferred. */
  private static List<Span> ways(Attach attach) {
    List<Span> ways = new ArrayList<>();
    attach.points().stream().map(point -> point.at().at()).limit(1).forEach(ways::add);
    attach.lines().all().stream().map(line -> line.name().at()).limit(1).forEach(ways::add);
    attach.perEdge().map(Count::at).ifPresent(ways::add);
    attach.zones().all().stream().map(zone -> zone.name().at()).limit(1).forEach(ways::add);
    attach.every().map(Count::at).ifPresent(ways::add);
    return ways;
  }

  private void reportSecondWay(List<Span> ways) {
    if (ways.size() > 1) {
      problems.add(
          Problem.of(
              ways.get(1),
              "a second way to schedule the attachments of field " + field.name(),
              "one of per-edge, every, zones, lines, points or file"));
    }
  }
}
