package clampwise.facts.roof;

import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Panel;
import clampwise.job.Text;
import clampwise.source.Span;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Finds which seam clamps and rib brackets sit on which coverings. */
final class PartUses {

  private record Key(String panel, Text name) {}

  private final Layout layout;
  private final PartLookup parts;
  private final Map<Key, Subject> causes = new HashMap<>();

  private PartUses(Layout layout) {
    this.layout = layout;
    this.parts = new PartLookup(layout);
  }

  /** Each part once a field, in the order of the fields. */
  static List<PartUse> of(Layout layout) {
    PartUses uses = new PartUses(layout);
    layout.planes().forEach(uses::nameCauses);
    List<PartUse> found = new ArrayList<>();
    for (PlaneLayout plane : layout.planes()) {
      plane.panel().ifPresent(panel -> uses.collect(plane, panel, found));
    }
    return found;
  }

  /** Fields that name no seam clamp or rib bracket at all. */
  static List<FieldLayout> fieldsWithoutPart(Layout layout) {
    return layout.fields().stream().filter(field -> names(field).isEmpty()).toList();
  }

  /**
   * A part that fields share is named after the first of them by name, however they are written.
   */
  private void nameCauses(PlaneLayout plane) {
    for (FieldLayout field : plane.fields()) {
      for (Text name : names(field)) {
        causes.merge(
            new Key(plane.panelName(), name),
            own(field, name),
            (one, other) -> one.compareTo(other) <= 0 ? one : other);
      }
    }
  }

  private static Subject own(FieldLayout field, Text name) {
    return RoofSubjects.field(field).part("attachment " + name.value());
  }

  private void collect(PlaneLayout plane, Panel panel, List<PartUse> found) {
    for (FieldLayout field : plane.fields()) {
      names(field).stream().flatMap(name -> use(plane, panel, field, name)).forEach(found::add);
    }
  }

  private Stream<PartUse> use(PlaneLayout plane, Panel panel, FieldLayout field, Text name) {
    Subject own = own(field, name);
    Subject cause = causes.getOrDefault(new Key(plane.panelName(), name), own);
    return parts.find(name).stream()
        .map(
            part ->
                new PartUse(
                    plane, panel, field, name, part, cause, panelAt(plane), parts.at(name)));
  }

  private Span panelAt(PlaneLayout plane) {
    return layout.job().panels().all().stream()
        .filter(item -> item.name().value().equals(plane.panelName()))
        .map(item -> item.name().at())
        .findFirst()
        .orElse(plane.plane().panel().at());
  }

  private static Collection<Text> names(FieldLayout field) {
    Map<String, Text> names = new LinkedHashMap<>();
    field.attachments().stream()
        .map(Attachment::part)
        .flatMap(part -> part.stream())
        .forEach(part -> names.putIfAbsent(part.value(), part));
    if (names.isEmpty()) {
      field.field().attachment().ifPresent(part -> names.put(part.value(), part));
    }
    return names.values();
  }
}
