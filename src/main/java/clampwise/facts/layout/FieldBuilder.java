package clampwise.facts.layout;

import clampwise.job.Attach;
import clampwise.job.Field;
import clampwise.job.ModuleClamp;
import clampwise.job.ModuleType;
import clampwise.job.Named;
import clampwise.job.Unreadable;
import clampwise.source.Problem;
import clampwise.source.Problems;
import java.util.List;
import java.util.Optional;

/** Lays out one field on its plane: modules, lines, attachments. */
final class FieldBuilder {

  /** Keys that place the modules of a field. */
  private static final List<String> PLACING =
      List.of("block", "columns", "gap", "column-gap", "row-gap", "other-modules");

  private final Unreadable unreadable;
  private final PartFinder parts;
  private final Problems problems;

  FieldBuilder(Unreadable unreadable, PartFinder parts, Problems problems) {
    this.unreadable = unreadable;
    this.parts = parts;
    this.problems = problems;
  }

  /**
   * The field in place, or nothing if its module type or a gap it needs is not known, what places
   * its modules could not be read, or it has none.
   */
  Optional<FieldLayout> build(Named.Item<Field> field, Ground ground) {
    if (PLACING.stream().anyMatch(key -> isLost(field, key)) || isMidClampLost(field.value())) {
      return Optional.empty();
    }
    Optional<ModuleType> type = parts.module(field.value().module());
    Optional<Gaps> gaps = gaps(field);
    if (type.isEmpty() || gaps.isEmpty()) {
      return Optional.empty();
    }
    List<PlacedModule> modules = modules(field, type.get(), gaps.get());
    return modules.isEmpty()
        ? Optional.empty()
        : Optional.of(layout(field, type.get(), gaps.get(), modules, ground));
  }

  private boolean isLost(Named.Item<Field> field, String key) {
    return unreadable.touches("fields", field.name().value(), key);
  }

  /** A mid clamp sets the gap where none is given. */
  private boolean isMidClampLost(Field field) {
    return field.gap().isEmpty()
        && field
            .midClamp()
            .filter(name -> unreadable.touches("parts", "mid-clamps", name.value(), "gap"))
            .isPresent();
  }

  private List<PlacedModule> modules(Named.Item<Field> field, ModuleType type, Gaps gaps) {
    double alongM = ModulePlacer.alongM(type, field.value().orientation().value());
    List<ColumnPlan> plans = new ColumnPlans(field, alongM + gaps.columnM(), problems).all();
    return new ModulePlacer(field, type, gaps.rowM(), parts, problems).place(plans);
  }

  private FieldLayout layout(
      Named.Item<Field> item,
      ModuleType type,
      Gaps gaps,
      List<PlacedModule> modules,
      Ground ground) {
    Field field = item.value();
    LineMap lines = LineMap.of(modules, gaps.rowM());
    Scheduled scheduled =
        unscheduled(item)
            .map(Scheduled::unknown)
            .orElseGet(() -> new Schedule(item, lines, ground, parts.edgeRules(), problems).read());
    List<Attachment> attachments =
        new AttachmentBuilder(field, lines, ground).build(scheduled.planned());
    return new FieldLayout(
        item.name().value(),
        field,
        field.module().value(),
        type,
        parts.attachment(field.attachment()),
        parts.midClamp(field.midClamp()),
        parts.endClamp(field.endClamp()),
        gaps.columnM(),
        gaps.rowM(),
        modules,
        lines.lines(),
        attachments,
        ModuleEdges.of(modules, attachments),
        scheduled.unknown(),
        item.name().at());
  }

  /** Why the attachments cannot be placed as meant, if something they need could not be read. */
  private Optional<String> unscheduled(Named.Item<Field> item) {
    Field field = item.value();
    if (isLost(item, "attach")) {
      return Optional.of("the attachment schedule of field " + item.name() + " could not be read");
    }
    boolean byZone = field.attach().flatMap(Attach::perEdge).isPresent();
    return byZone && unreadable.touches("modules", field.module().value(), "clamp-zones")
        ? Optional.of("the clamp zones of module " + field.module() + " could not be read")
        : Optional.empty();
  }

  private Optional<Gaps> gaps(Named.Item<Field> field) {
    Optional<ModuleClamp> midClamp = parts.midClamp(field.value().midClamp());
    Optional<Double> columnM = Gaps.column(field.value(), midClamp);
    Optional<Double> rowM = Gaps.row(field.value(), midClamp);
    boolean needed =
        columnM.isEmpty() && needsColumnGap(field.value())
            || rowM.isEmpty() && needsRowGap(field.value());
    if (needed) {
      problems.add(
          Problem.of(
              field.name().at(),
              "a field whose gap between modules is not given",
              "gap, or a mid clamp that sets it"));
      return Optional.empty();
    }
    return Optional.of(new Gaps(columnM.orElse(Gaps.NOT_NEEDED_M), rowM.orElse(Gaps.NOT_NEEDED_M)));
  }

  private static boolean needsColumnGap(Field field) {
    return field.block().filter(block -> block.columns().value() > 1).isPresent()
        || field.columns().stream().anyMatch(column -> column.at().isEmpty());
  }

  private static boolean needsRowGap(Field field) {
    return field.block().filter(block -> block.rows().value() > 1).isPresent()
        || field.columns().stream().anyMatch(column -> column.modules().value() > 1);
  }
}
