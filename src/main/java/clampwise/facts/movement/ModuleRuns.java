package clampwise.facts.movement;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.facts.Subjects;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.roof.Shown;
import clampwise.finding.Subject;
import java.util.List;
import java.util.Optional;

/**
 * Measures runs of frames without a break: up the slope, where mid clamps tie the modules of a
 * column, and along the eave, where columns stand apart and only frames that touch push each other.
 */
final class ModuleRuns {

  private final MovingPlane moving;
  private final FieldLayout field;
  private final Limit most;
  private final Abutting abutting;

  private ModuleRuns(MovingPlane moving, FieldLayout field, Abutting abutting) {
    this.moving = moving;
    this.abutting = abutting;
    this.field = field;
    this.most = moving.limits().get("module-run-most");
  }

  static void ask(MovingPlane moving) {
    List<FieldLayout> fields = moving.plane().fields();
    Abutting abutting = new Abutting(FieldEnds.touching(FieldEnds.all(fields)));
    fields.forEach(field -> new ModuleRuns(moving, field, abutting).ask());
  }

  private void ask() {
    Stack.longest(field).ifPresent(this::up);
    along().ifPresent(run -> moving.answers().add(fact(run)));
  }

  private record Run(
      String direction, String tie, PlacedModule from, PlacedModule to, boolean slides, double m) {}

  private void up(Stack stack) {
    HoldingClamp clamp = HoldingClamp.of(moving, field);
    if (stack.count() > 1 && clamp.slides().isEmpty()) {
      Subject subject = Subjects.field(field.name()).part("run up the slope");
      moving.missing(ModuleRun.class, subject, clamp.slidesUnknown(), clamp.at());
    } else {
      String tie = "mid clamps that hold them fast";
      boolean slides = stack.count() > 1 && clamp.slides().orElseThrow();
      PlacedModule last = abutting.lastUp(stack.highest());
      double lengthM = Snap.m(last.topM() - stack.lowest().bottomM());
      moving
          .answers()
          .add(
              fact(
                  new Run(
                      "up the slope", tie + across(last), stack.lowest(), last, slides, lengthM)));
    }
  }

  /** The longest row of columns whose frames touch; a column by itself where none does. */
  private Optional<Run> along() {
    Optional<Run> longest = Optional.empty();
    Optional<Run> current = Optional.empty();
    int column = 0;
    for (PlacedModule module : field.modules()) {
      if (module.column() != column) {
        column = module.column();
        current =
            Optional.of(
                current
                    .filter(run -> touches(run, module))
                    .map(run -> to(run, module))
                    .orElseGet(() -> of(module)));
        longest = longer(longest, current.get());
      }
    }
    return current.isPresent() ? longer(longest, goingOn(current.get())) : longest;
  }

  /** The run that ends with its field may go on in another one. */
  private Run goingOn(Run run) {
    PlacedModule last = abutting.lastAlong(run.to());
    return last.name().equals(run.to().name()) ? run : to(run, last);
  }

  private String across(PlacedModule last) {
    return last.field().equals(field.name()) ? "" : ", and by frames of two fields that touch";
  }

  private static boolean isLonger(Run run, Optional<Run> other) {
    return other.filter(known -> known.m() >= run.m()).isEmpty();
  }

  private static Optional<Run> longer(Optional<Run> longest, Run run) {
    return isLonger(run, longest) ? Optional.of(run) : longest;
  }

  private static boolean touches(Run run, PlacedModule module) {
    return Abutting.touch(run.to().rightM(), module.leftM());
  }

  private static Run to(Run run, PlacedModule module) {
    double lengthM = Snap.m(module.rightM() - run.from().leftM());
    return new Run(run.direction(), "frames that touch", run.from(), module, false, lengthM);
  }

  private static Run of(PlacedModule module) {
    String tie = "nothing: columns stand apart";
    return new Run("along the eave", tie, module, module, false, Snap.m(module.alongM()));
  }

  private ModuleRun fact(Run run) {
    Subject subject = Subjects.field(field.name()).part("run " + run.direction());
    return new ModuleRun(
        subject,
        subject,
        run.from().at(),
        Shown.of(field),
        field.name(),
        run.direction(),
        run.tie(),
        run.from().name(),
        run.to().name(),
        run.slides(),
        run.m(),
        Snap.m(most.si()),
        Optional.of(most));
  }
}
