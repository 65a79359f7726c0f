package clampwise.facts.roof;

import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.finding.Subject;
import clampwise.source.Span;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Finds the field in which a value was written that several fields share. */
final class WrittenOnce {

  private final Map<Span, Subject> firstAt = new HashMap<>();
  private final Function<FieldLayout, Optional<Span>> value;

  /** Fields by where they were given a value. */
  WrittenOnce(Layout layout, Function<FieldLayout, Optional<Span>> value) {
    this.value = value;
    for (FieldLayout field : layout.fields()) {
      value.apply(field).ifPresent(at -> firstAt.putIfAbsent(at, RoofSubjects.field(field)));
    }
  }

  /** The first field that has its value from the same place; the field itself if it has none. */
  Subject cause(FieldLayout field) {
    return value.apply(field).map(firstAt::get).orElseGet(() -> RoofSubjects.field(field));
  }
}
