package clampwise.facts.roof;

import clampwise.catalogue.Catalogue;
import clampwise.facts.layout.Layout;
import clampwise.job.Named;
import clampwise.job.Parts;
import clampwise.job.RoofAttachment;
import clampwise.job.Text;
import clampwise.source.Span;
import java.util.Optional;
import java.util.stream.Stream;

/** Seam clamps and rib brackets by name: those of the job before those of the catalogue. */
final class PartLookup {

  private final Catalogue all;
  private final Optional<Parts> written;

  PartLookup(Layout layout) {
    all = layout.catalogue().with(layout.job());
    written = layout.job().parts();
  }

  Optional<RoofAttachment> find(Text name) {
    return all.attachment(name.value());
  }

  /** Where a missing value of a part would be written: at the part if it is of the job. */
  Span at(Text name) {
    return written.flatMap(parts -> name(parts, name.value())).map(Text::at).orElse(name.at());
  }

  private static Optional<Text> name(Parts parts, String name) {
    return Stream.of(parts.seamClamps(), parts.ribBrackets())
        .flatMap(kind -> kind.all().stream())
        .map(Named.Item::name)
        .filter(text -> text.value().equals(name))
        .findFirst();
  }
}
