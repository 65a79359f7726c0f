package clampwise.facts.layout;

import clampwise.job.Attach;
import clampwise.job.Count;
import clampwise.job.Text;
import clampwise.source.Problem;
import clampwise.source.Problems;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Attachments at every n-th seam that crosses a module edge, with n given or taken from the wind
 * zone. Seams count from the one named by {@code from}, else from the first that crosses the field.
 */
final class PatternSchedule {

  private record Crossing(int line, SeamLine seam) {}

  private final Text field;
  private final LineMap lines;
  private final Ground ground;
  private final Problems problems;
  private final TreeSet<String> zonesWithoutStep = new TreeSet<>();

  PatternSchedule(Text field, LineMap lines, Ground ground, Problems problems) {
    this.field = field;
    this.lines = lines;
    this.ground = ground;
    this.problems = problems;
  }

  Scheduled read(Attach attach) {
    if (steps(attach).anyMatch(step -> step.value() == 0)) {
      return zeroStep(attach);
    }
    if (!attach.zones().isEmpty() && ground.zonesUnknown().isPresent()) {
      return Scheduled.unknown(
          "the schedule goes by wind zone, and " + ground.zonesUnknown().get());
    }
    List<Crossing> crossings = crossings();
    int first = attach.from().map(Count::value).orElseGet(() -> lowest(crossings));
    List<Planned> planned =
        crossings.stream().flatMap(crossing -> planned(crossing, first, attach).stream()).toList();
    return zonesWithoutStep.isEmpty() ? Scheduled.of(planned) : missingZone(attach);
  }

  private static Stream<Count> steps(Attach attach) {
    return Stream.concat(
        attach.every().stream(), attach.zones().all().stream().map(zone -> zone.value()));
  }

  private Scheduled zeroStep(Attach attach) {
    steps(attach)
        .filter(step -> step.value() == 0)
        .forEach(step -> problems.add(Problem.of(step.at(), "every 0th seam", "1 or more")));
    return Scheduled.unknown("the attachment schedule of field " + field + " is not readable");
  }

  private Scheduled missingZone(Attach attach) {
    String zones = String.join(", ", zonesWithoutStep);
    Text firstKey = attach.zones().all().iterator().next().name();
    problems.add(
        Problem.of(
            firstKey.at(),
            "a schedule by zone without zone " + zones,
            "a number for each zone the field reaches"));
    return Scheduled.unknown(
        "the attachment schedule of field " + field + " leaves out zone " + zones);
  }

  private List<Crossing> crossings() {
    return IntStream.rangeClosed(1, lines.count()).boxed().flatMap(this::onLine).toList();
  }

  private Stream<Crossing> onLine(int line) {
    List<PlacedModule> modules = lines.modulesOn(line);
    double leftM = modules.stream().mapToDouble(PlacedModule::leftM).min().orElse(0);
    double rightM = modules.stream().mapToDouble(PlacedModule::rightM).max().orElse(0);
    return ground.seams().crossing(leftM, rightM, lines.upM(line)).stream()
        .filter(seam -> lines.holds(line, seam.alongM()))
        .map(seam -> new Crossing(line, seam));
  }

  private static int lowest(List<Crossing> crossings) {
    return crossings.stream().mapToInt(crossing -> crossing.seam().number()).min().orElse(1);
  }

  private Optional<Planned> planned(Crossing crossing, int first, Attach attach) {
    double upM = lines.upM(crossing.line());
    int fromFirst = crossing.seam().number() - first;
    return step(crossing.seam().alongM(), upM, attach)
        .filter(step -> fromFirst >= 0 && fromFirst % step.value() == 0)
        .map(
            step ->
                Planned.crossing(field.value(), crossing.line(), upM, crossing.seam(), step.at()));
  }

  private Optional<Count> step(double alongM, double upM, Attach attach) {
    if (attach.zones().isEmpty()) {
      return attach.every();
    }
    Optional<ZoneArea> zone = ground.zones().at(alongM, upM);
    Optional<Count> step = zone.flatMap(here -> ZoneKeys.find(attach.zones(), here.name()));
    if (step.isEmpty()) {
      zone.map(ZoneArea::name).ifPresent(zonesWithoutStep::add);
    }
    return step;
  }
}
