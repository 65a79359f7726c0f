package clampwise.facts.layout;

import clampwise.catalogue.CodeTables;
import clampwise.facts.OtherCores;
import clampwise.job.Field;
import clampwise.job.Job;
import clampwise.job.Named;
import clampwise.job.Panel;
import clampwise.job.Plane;
import clampwise.source.Problems;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/** Lays out one roof plane with everything on it. */
final class PlaneBuilder {

  private final Job job;
  private final CodeTables codes;
  private final PartFinder parts;
  private final Problems problems;
  private final Set<String> complete = new HashSet<>();

  PlaneBuilder(Job job, CodeTables codes, PartFinder parts, Problems problems) {
    this.job = job;
    this.codes = codes;
    this.parts = parts;
    this.problems = problems;
  }

  /** Names of the fields that were laid out as written. */
  Set<String> complete() {
    return complete;
  }

  PlaneLayout build(Named.Item<Plane> item) {
    Plane plane = item.value();
    Optional<Panel> panel = job.panels().find(plane.panel().value());
    LineWord word = LineWord.of(panel);
    PlaneReading reading =
        new PlaneReading(job.unreadable(), item.name().value(), plane.panel().value(), word);
    Outline outline = reading.isOutlineLost() ? Outline.NONE : new Outlines(problems).of(item);
    Supplier<WindZones> zones =
        OtherCores.start(
            new ZoneMap(new WindRoof(job, plane, codes), outline, codes, reading)::draw);
    List<SeamLine> seams =
        reading.areSeamsLost()
            ? List.of()
            : SeamLines.clipped(word, new SeamRow(problems).of(plane, panel, outline), outline);
    Supports supports = new Supports(problems);
    supports.joints(plane, outline);
    List<FieldLayout> fields =
        fields(
            item.name().value(),
            new Ground(SeamMap.of(seams, panel), reading.seamsUnknown(), zones));
    return new PlaneLayout(
        item.name().value(),
        plane,
        plane.panel().value(),
        panel,
        outline.area(),
        outline.edges(),
        seams,
        supports.purlins(plane, outline),
        supports.endLaps(plane),
        zones.get().areas(),
        zones.get().unknown(),
        new Obstacles(problems, outline).of(plane.obstructions()),
        fields,
        reading);
  }

  private List<FieldLayout> fields(String plane, Ground ground) {
    FieldBuilder builder = new FieldBuilder(job.unreadable(), parts, problems);
    return job.fields().all().stream()
        .filter(field -> isOn(plane, field))
        .flatMap(field -> build(builder, field, ground).stream())
        .toList();
  }

  private Optional<FieldLayout> build(
      FieldBuilder builder, Named.Item<Field> field, Ground ground) {
    int before = problems.count();
    Optional<FieldLayout> built = builder.build(field, ground);
    if (built.isPresent() && problems.count() == before) {
      complete.add(field.name().value());
    }
    return built;
  }

  private static boolean isOn(String plane, Named.Item<Field> field) {
    return field.value().plane().value().equals(plane);
  }
}
