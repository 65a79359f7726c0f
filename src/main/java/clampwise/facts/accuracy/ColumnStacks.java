package clampwise.facts.accuracy;

import clampwise.calc.Snap;
import clampwise.calc.accuracy.ToleranceStack;
import clampwise.facts.Subjects;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.PlacedModule;
import clampwise.finding.Subject;
import clampwise.job.ModuleClamp;
import clampwise.job.Quantity.Length;
import clampwise.job.Unreadable;
import java.util.Optional;

/** Asks of the longest column of a field how far it may be off beside what its clamps take up. */
record ColumnStacks(StackQuestions asked, FieldLayout field) {

  /** A column of one module has no mid clamp. */
  void ask() {
    Stretch longest = longest();
    if (longest.modules() < 2) {
      return;
    }
    Optional<Length> most = field.midClamp().flatMap(ModuleClamp::gapAtMost);
    if (most.isPresent()) {
      asked.answers().add(fact(longest, Snap.m(most.get().m() - field.rowGapM())));
    } else {
      asked.missing(ColumnStack.class, field, unknown());
    }
  }

  private String unknown() {
    if (field.midClamp().isEmpty()) {
      return "field " + field.name() + " names no known mid clamp (mid-clamp)";
    }
    String clamp = field.field().midClamp().orElseThrow().value();
    Unreadable lost = asked.layout().job().unreadable();
    String what = "the widest gap that mid clamp " + clamp + " holds";
    return lost.missing(what, "parts", "mid-clamps", clamp, "gap-at-most");
  }

  /** Neighbours up the slope. */
  private record Stretch(int column, int modules) {}

  /** The longest of all stretches: modules stand by column, then by row. */
  private Stretch longest() {
    Stretch longest = new Stretch(0, 0);
    int length = 0;
    PlacedModule before = field.modules().get(0);
    for (PlacedModule module : field.modules()) {
      boolean goesOn = module.column() == before.column() && module.row() == before.row() + 1;
      length = goesOn ? length + 1 : 1;
      longest = length > longest.modules() ? new Stretch(module.column(), length) : longest;
      before = module;
    }
    return longest;
  }

  private ColumnStack fact(Stretch longest, double slackM) {
    ToleranceStack stack = asked.stack();
    int all = longest.modules();
    int modules = asked.rowsToMark().map(every -> Math.min(every.value(), all)).orElse(all);
    Subject subject = Subjects.field(field.name());
    return new ColumnStack(
        subject.part("column tolerances"),
        subject.part("column tolerances"),
        asked.at(asked.rowsToMark()),
        asked.tolerance().unit(),
        "column " + longest.column() + " of field " + field.name(),
        modules,
        Snap.m(asked.tolerance().m()),
        stack.likelyM(modules),
        stack.worstM(modules),
        slackM,
        field.field().midClamp().orElseThrow().value(),
        marks(stack.mostWorst(slackM)));
  }

  private static String marks(int every) {
    return every < 1
        ? "work to a smaller tolerance or a smaller gap: one module may use up what the clamp holds"
        : "set from a measured mark every " + (every == 1 ? "row" : every + " rows");
  }
}
