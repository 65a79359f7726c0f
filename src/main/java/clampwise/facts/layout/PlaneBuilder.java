package clampwise.facts.layout;

import clampwise.job.Field;
import clampwise.job.Job;
import clampwise.job.Named;
import clampwise.job.Panel;
import clampwise.job.Plane;
import clampwise.source.Problems;
import java.util.List;
import java.util.Optional;

/** Lays out one roof plane with everything on it. */
final class PlaneBuilder {

  private final Job job;
  private final PartFinder parts;
  private final Problems problems;

  PlaneBuilder(Job job, PartFinder parts, Problems problems) {
    this.job = job;
    this.parts = parts;
    this.problems = problems;
  }

  PlaneLayout build(Named.Item<Plane> item) {
    Plane plane = item.value();
    Optional<Panel> panel = job.panels().find(plane.panel().value());
    Outline outline = new Outlines(problems).of(item);
    List<SeamLine> seams =
        SeamLines.clipped(new SeamRow(problems).of(plane, panel, outline), outline);
    WindZones zones = new ZoneMap(job, plane, outline).draw();
    Supports supports = new Supports(problems);
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
        zones.areas(),
        zones.unknown(),
        new Obstacles(problems).of(plane.obstructions()),
        fields(item.name().value(), ground(item, seams, panel, zones)));
  }

  private static Ground ground(
      Named.Item<Plane> item, List<SeamLine> seams, Optional<Panel> panel, WindZones zones) {
    return new Ground(
        item.name().value(),
        SeamMap.of(seams, panel),
        new ZoneLookup(zones.areas()),
        zones.unknown());
  }

  private List<FieldLayout> fields(String plane, Ground ground) {
    FieldBuilder builder = new FieldBuilder(parts, problems);
    return job.fields().all().stream()
        .filter(field -> isOn(plane, field))
        .flatMap(field -> builder.build(field, ground).stream())
        .toList();
  }

  private static boolean isOn(String plane, Named.Item<Field> field) {
    return field.value().plane().value().equals(plane);
  }
}
