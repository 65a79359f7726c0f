package clampwise.facts.accuracy;

import clampwise.calc.Snap;
import clampwise.calc.accuracy.ReDatum;
import clampwise.facts.Subjects;
import clampwise.facts.clamps.SeamWindow;
import clampwise.facts.clamps.SeamWindows;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Count;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;

/** Asks of each row of a field how far its modules may be off beside what the seams bear. */
record RowStacks(StackQuestions asked, PlaneLayout plane, FieldLayout field) {

  void ask() {
    SeamWindows windows = SeamWindows.of(asked.layout(), plane, field, asked.limits());
    Optional<String> unknown = windows.unknown(plane, field);
    if (unknown.isPresent()) {
      asked.missing(RowStack.class, field, unknown.get());
      return;
    }
    for (SeamWindows.Row row : windows.rows(field, asked.tolerance().m())) {
      asked.answers().add(fact(row));
    }
  }

  private RowStack fact(SeamWindows.Row row) {
    Run likely = run(row, asked.stack()::likelyM);
    Run worst = run(row, asked.stack()::worstM);
    Subject subject = Subjects.field(field.name());
    return new RowStack(
        subject.part(row.name() + " tolerances"),
        subject.part("row tolerances"),
        asked.at(asked.columnsToMark()),
        asked.tolerance().unit(),
        row.name() + " of field " + field.name(),
        row.windows().size(),
        Snap.m(asked.tolerance().m()),
        likely.tightest(),
        likely.stackM(),
        likely.slackM(),
        worst.tightest(),
        worst.stackM(),
        worst.slackM(),
        worst.marks());
  }

  private Run run(SeamWindows.Row row, IntToDoubleFunction stackM) {
    List<Double> slackM = new ArrayList<>();
    for (SeamWindow window : row.windows()) {
      slackM.add(window.slackM());
    }
    int every = asked.columnsToMark().map(Count::value).orElse(slackM.size());
    return new Run(row.windows(), new ReDatum(slackM, stackM), every);
  }

  /** The modules of a row between marks. */
  private record Run(List<SeamWindow> windows, ReDatum reDatum, int every) {

    /** The first module that may leave its slack, else the one that comes nearest to it. */
    private int index() {
      Optional<Integer> out = reDatum.firstOut(every);
      if (out.isPresent()) {
        return out.get() - 1;
      }
      int nearest = 0;
      for (int i = 1; i < windows.size(); i++) {
        nearest = leftM(i) < leftM(nearest) ? i : nearest;
      }
      return nearest;
    }

    private double leftM(int index) {
      return windows.get(index).slackM() - stackM(index);
    }

    private double stackM(int index) {
      return reDatum.stackM().applyAsDouble(index % every + 1);
    }

    String tightest() {
      return windows.get(index()).module().name();
    }

    double stackM() {
      return stackM(index());
    }

    double slackM() {
      return windows.get(index()).slackM();
    }

    /** Columns to set from a mark, in words; empty if none has to be. */
    String marks() {
      Optional<List<Integer>> marks = reDatum.marks();
      if (marks.isEmpty()) {
        return "work to a smaller tolerance or move the row: right behind a mark a module may"
            + " leave its clamp zone";
      }
      List<String> columns = new ArrayList<>();
      for (int mark : marks.get()) {
        columns.add("C" + windows.get(mark - 1).module().column());
      }
      return columns.isEmpty() ? "" : "set from a measured mark: " + String.join(", ", columns);
    }
  }
}
