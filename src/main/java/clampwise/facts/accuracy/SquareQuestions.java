package clampwise.facts.accuracy;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Fact;
import clampwise.facts.Subjects;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.job.Install;
import clampwise.job.Install.Squareness;
import clampwise.job.Quantity.Length;
import clampwise.units.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Asks of each field whether its corners and diagonals were measured square. */
record SquareQuestions(Layout layout, Limits limits, Answers answers) {

  private static final int BOTH = 2;

  static void ask(Layout layout, Install install, Limits limits, Answers answers) {
    SquareQuestions questions = new SquareQuestions(layout, limits, answers);
    for (FieldLayout field : layout.fields()) {
      Optional<Squareness> measured = install.squareness().find(field.name());
      questions.askDiagonals(field, measured);
      questions.askCorner(field, measured);
    }
  }

  private void askDiagonals(FieldLayout field, Optional<Squareness> measured) {
    List<Length> both = measured.map(Squareness::diagonals).orElse(List.of());
    if (both.size() == BOTH) {
      answers.add(diagonals(field, both.get(0), both.get(1)));
      askDrawn(field, both.get(0), both.get(1));
    } else {
      missing(DiagonalPair.class, field, "both diagonals", "diagonals");
      missing(DrawnDiagonal.class, field, "both diagonals", "diagonals");
    }
  }

  private void askDrawn(FieldLayout field, Length one, Length other) {
    OptionalDouble drawnM = FieldDiagonal.of(field);
    if (drawnM.isPresent()) {
      answers.add(drawn(field, one, squareM(one, other), drawnM.getAsDouble()));
    } else {
      String reason = "field " + field.name() + " has no module at some of its corners";
      answers.missing(DrawnDiagonal.class, Subjects.field(field.name()), reason, one.at());
    }
  }

  private DrawnDiagonal drawn(FieldLayout field, Length one, double squareM, double drawnM) {
    Limit most = limits.get("diagonal-off-drawing-most");
    return new DrawnDiagonal(
        Subjects.field(field.name()).part("size"),
        one.at(),
        small(one.unit()),
        Map.of("squareM", one.unit(), "drawnM", one.unit()),
        field.name(),
        Snap.m(squareM),
        Snap.m(drawnM),
        Snap.m(Math.abs(squareM - drawnM)),
        Snap.m(most.si() * drawnM),
        squareM > drawnM ? "larger" : "smaller",
        Optional.of(most));
  }

  /** What both diagonals of a parallelogram come to once it is a rectangle of the same sides. */
  private static double squareM(Length one, Length other) {
    return Math.sqrt((one.m() * one.m() + other.m() * other.m()) / 2);
  }

  private DiagonalPair diagonals(FieldLayout field, Length one, Length other) {
    Limit most = limits.get("diagonal-difference-most");
    double meanM = (one.m() + other.m()) / 2;
    return new DiagonalPair(
        Subjects.field(field.name()).part("diagonals"),
        one.at(),
        small(one.unit()),
        Map.of("squareM", one.unit()),
        field.name(),
        Snap.m(Math.abs(one.m() - other.m())),
        Snap.m(most.si() * meanM),
        Snap.m(squareM(one, other)),
        Optional.of(most));
  }

  private void askCorner(FieldLayout field, Optional<Squareness> measured) {
    Optional<Length> along = measured.flatMap(Squareness::along);
    Optional<Length> up = measured.flatMap(Squareness::up);
    Optional<Length> diagonal = measured.flatMap(Squareness::diagonal);
    if (along.isPresent() && up.isPresent() && diagonal.isPresent()) {
      corner(field, along.get(), up.get(), diagonal.get());
    } else {
      missing(SquareCorner.class, field, "a corner with its diagonal", "diagonal");
    }
  }

  private void corner(FieldLayout field, Length along, Length up, Length diagonal) {
    var corner = new clampwise.calc.accuracy.Squareness(along.m(), up.m());
    double off = corner.offSquare(diagonal.m());
    if (Math.abs(off) > 1) {
      String reason = "the sides and the diagonal of field " + field.name() + " make no corner";
      answers.missing(SquareCorner.class, Subjects.field(field.name()), reason, diagonal.at());
      return;
    }
    Limit most = limits.get("out-of-square-most");
    answers.add(
        new SquareCorner(
            Subjects.field(field.name()).part("corner"),
            diagonal.at(),
            small(diagonal.unit()),
            Map.of("overM", up.unit(), "rightM", diagonal.unit()),
            field.name(),
            Snap.m(Math.abs(off) * up.m()),
            Snap.m(up.m()),
            Snap.m(most.si() * up.m()),
            Snap.m(corner.diagonalM()),
            Optional.of(most)));
  }

  /** Differences of lengths in metres are read in millimetres. */
  private static Unit small(Unit unit) {
    return unit.equals(Unit.METRE) ? Unit.MILLIMETRE : unit;
  }

  private void missing(Class<? extends Fact> type, FieldLayout field, String what, String key) {
    String reason =
        layout
            .job()
            .unreadable()
            .unwritten(
                "nobody has measured " + what + " of field " + field.name(),
                what + " of field " + field.name(),
                "install",
                "squareness",
                field.name(),
                key);
    answers.missing(type, Subjects.field(field.name()), reason, field.at());
  }
}
