package clampwise.facts.roof;

import clampwise.facts.layout.Layout;
import clampwise.job.Named;
import clampwise.job.Parts;
import clampwise.job.RoofAttachment;
import clampwise.job.Text;
import clampwise.source.Span;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Seam clamps and rib brackets by name: those of the job before those of the catalogue. */
final class PartLookup {

  private final Map<String, Named.Item<? extends RoofAttachment>> byName = new LinkedHashMap<>();
  private final Optional<Parts> written;

  PartLookup(Layout layout) {
    written = layout.job().parts();
    written.ifPresent(this::add);
    add(layout.catalogue().parts());
  }

  private void add(Parts parts) {
    Stream.of(parts.seamClamps(), parts.ribBrackets())
        .flatMap(kind -> kind.all().stream())
        .forEach(item -> byName.putIfAbsent(item.name().value(), item));
  }

  Optional<RoofAttachment> find(Text name) {
    return Optional.ofNullable(byName.get(name.value())).map(Named.Item::value);
  }

  /** Where a missing value of a part would be written: at the part if it is of the job. */
  Span at(Text name) {
    return written
        .flatMap(parts -> name(parts, name.value()))
        .map(Text::at)
        .orElse(name.at());
  }

  private static Optional<Text> name(Parts parts, String name) {
    return Stream.of(parts.seamClamps(), parts.ribBrackets())
        .flatMap(kind -> kind.all().stream())
        .map(Named.Item::name)
        .filter(text -> text.value().equals(name))
        .findFirst();
  }

  Map<String, Named.Item<? extends RoofAttachment>> all() {
    return byName;
  }
}
