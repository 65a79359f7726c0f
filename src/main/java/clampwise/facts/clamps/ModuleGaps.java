package clampwise.facts.clamps;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Subjects;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.ModuleIndex;
import clampwise.facts.layout.Neighbour;
import clampwise.facts.layout.Neighbour.Side;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Field;
import clampwise.job.Field.Column;
import clampwise.job.ModuleClamp;
import clampwise.job.Quantity.Length;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Asks how far each module is from its neighbours to the right and above. */
final class ModuleGaps {

  private final Answers answers;
  private final Limit least;
  private final double neighbourM;
  private final ModuleIndex index;
  private final Map<String, FieldLayout> fields;

  private ModuleGaps(PlaneLayout plane, Limits limits, Answers answers) {
    this.answers = answers;
    this.least = limits.get("module-gap-least");
    this.neighbourM = limits.get("module-neighbour-within").si();
    this.index = ModuleIndex.of(plane);
    this.fields =
        plane.fields().stream().collect(Collectors.toMap(FieldLayout::name, Function.identity()));
  }

  static void ask(Layout layout, Limits limits, Answers answers) {
    for (PlaneLayout plane : layout.planes()) {
      ModuleGaps gaps = new ModuleGaps(plane, limits, answers);
      plane.fields().forEach(field -> field.modules().forEach(gaps::judge));
    }
  }

  private void judge(PlacedModule module) {
    for (Side side : new Side[] {Side.RIGHT, Side.ABOVE}) {
      index.beside(module, side, neighbourM).stream()
          .findFirst()
          .filter(neighbour -> !isSetByClamp(module, neighbour))
          .map(neighbour -> fact(module, neighbour))
          .ifPresent(answers::add);
    }
  }

  /** Rows closer than their mid clamp is wide are told as such: they cannot be built. */
  private boolean isSetByClamp(PlacedModule module, Neighbour neighbour) {
    boolean sameColumn =
        module.field().equals(neighbour.module().field())
            && module.column() == neighbour.module().column();
    return sameColumn
        && isAbove(neighbour)
        && layout(module)
            .midClamp()
            .flatMap(ModuleClamp::gap)
            .filter(set -> neighbour.gapM() < Snap.m(set.m()))
            .isPresent();
  }

  private ModuleGap fact(PlacedModule module, Neighbour neighbour) {
    Optional<Length> written = written(module, neighbour);
    return new ModuleGap(
        Subjects.module(module),
        cause(module, neighbour),
        written.map(Length::at).orElseGet(() -> startAt(neighbour.module())),
        written.map(Length::unit).orElse(Unit.MILLIMETRE),
        module.name(),
        neighbour.module().name(),
        neighbour.gapM(),
        Snap.m(least.si()),
        least);
  }

  /** The gap as written, if the field sets it rather than the start of a column or field. */
  private Optional<Length> written(PlacedModule module, Neighbour neighbour) {
    Field field = field(module);
    if (isApart(module, neighbour)) {
      return Optional.empty();
    }
    Optional<Length> own = isAbove(neighbour) ? field.rowGap() : field.columnGap();
    return own.or(field::gap);
  }

  private static boolean isAbove(Neighbour neighbour) {
    return neighbour.side() == Side.ABOVE;
  }

  /** Whether the two were placed by separate starts. */
  private boolean isApart(PlacedModule module, Neighbour neighbour) {
    PlacedModule other = neighbour.module();
    return !module.field().equals(other.field())
        || !isAbove(neighbour) && column(other).flatMap(Column::at).isPresent();
  }

  private Optional<Column> column(PlacedModule module) {
    Field field = field(module);
    int before = field.block().map(block -> block.columns().value()).orElse(0);
    return Stream.of(module.column() - before - 1)
        .filter(i -> i >= 0 && i < field.columns().size())
        .map(field.columns()::get)
        .findFirst();
  }

  private Span startAt(PlacedModule module) {
    return column(module)
        .flatMap(Column::at)
        .or(() -> field(module).block().map(Field.Block::at))
        .map(spot -> spot.at())
        .orElse(module.at());
  }

  private Subject cause(PlacedModule module, Neighbour neighbour) {
    PlacedModule other = neighbour.module();
    Subject field = Subjects.field(module.field());
    if (!module.field().equals(other.field())) {
      return field.part("beside field " + other.field());
    }
    if (isApart(module, neighbour)) {
      return field.part("start of column " + other.column());
    }
    Optional<Length> own = isAbove(neighbour) ? field(module).rowGap() : field(module).columnGap();
    String kind = isAbove(neighbour) ? "row-gap" : "column-gap";
    return field.part(own.isPresent() || field(module).gap().isEmpty() ? kind : "gap");
  }

  private Field field(PlacedModule module) {
    return layout(module).field();
  }

  private FieldLayout layout(PlacedModule module) {
    return Objects.requireNonNull(fields.get(module.field()));
  }
}
