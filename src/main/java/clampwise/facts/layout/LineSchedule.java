package clampwise.facts.layout;

import clampwise.job.Attach;
import clampwise.job.Count;
import clampwise.job.Named;
import clampwise.job.Text;
import clampwise.source.Nearest;
import clampwise.source.Problem;
import clampwise.source.Problems;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Attachments written as seam numbers for each line, or for all lines. */
final class LineSchedule {

  private static final String ALL = "all";

  private final String field;
  private final LineMap lines;
  private final SeamMap seams;
  private final Problems problems;

  LineSchedule(String field, LineMap lines, SeamMap seams, Problems problems) {
    this.field = field;
    this.lines = lines;
    this.seams = seams;
    this.problems = problems;
  }

  List<Planned> read(Attach attach) {
    attach.lines().all().forEach(this::checkLine);
    attach.lines().all().forEach(line -> line.value().forEach(this::checkSeam));
    List<Planned> planned = new ArrayList<>();
    for (int line = 1; line <= lines.count(); line++) {
      Optional<List<Count>> own = attach.lines().find(Integer.toString(line));
      if (own.isPresent()) {
        planned.addAll(on(line, own.get(), false));
      } else {
        planned.addAll(on(line, attach.lines().find(ALL).orElse(List.of()), true));
      }
    }
    return planned;
  }

  /** Seams named for all lines are only meant where the line has modules. */
  private List<Planned> on(int line, List<Count> numbers, boolean onlyAtModules) {
    Set<Integer> seen = new HashSet<>();
    List<Planned> planned = new ArrayList<>();
    for (Count number : numbers) {
      Optional<SeamLine> seam = seams.numbered(number.value(), lines.upM(line));
      if (seam.isPresent() && seen.add(number.value())) {
        if (!onlyAtModules || lines.holds(line, seam.get().alongM())) {
          planned.add(Planned.crossing(field, line, lines.upM(line), seam.get(), number.at()));
        }
      }
    }
    return planned;
  }

  private void checkLine(Named.Item<List<Count>> line) {
    Text name = line.name();
    List<String> known =
        Stream.concat(
                Stream.of(ALL), IntStream.rangeClosed(1, lines.count()).mapToObj(String::valueOf))
            .toList();
    if (!known.contains(name.value())) {
      problems.add(
          new Problem(
              name.at(),
              "line " + name + "; field " + field + " has " + lines.count() + " lines",
              "all, or a line number from 1 to " + lines.count(),
              Nearest.to(name.value(), known)));
    }
  }

  private void checkSeam(Count number) {
    if (number.value() < 1 || number.value() > seams.lastNumber()) {
      problems.add(
          Problem.of(
              number.at(),
              "seam " + number.value(),
              "a seam number from 1 to " + seams.lastNumber()));
    }
  }
}
