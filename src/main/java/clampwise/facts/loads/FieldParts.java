package clampwise.facts.loads;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.catalogue.Catalogue;
import clampwise.facts.layout.Attachment;
import clampwise.job.Panel;
import clampwise.job.RoofAttachment;
import clampwise.job.Tested;
import clampwise.job.Text;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The seam clamps and rib brackets of a field, and the tests of them that hold on its roof. */
final class FieldParts {

  private final FieldSite site;
  private final Catalogue catalogue;

  FieldParts(FieldSite site) {
    this.site = site;
    this.catalogue = site.layout().catalogue().with(site.job());
  }

  /** Each part once, in the order of the attachments. */
  Collection<Text> names() {
    Map<String, Text> names = new LinkedHashMap<>();
    for (Attachment attachment : site.field().attachments()) {
      attachment.part().ifPresent(part -> names.putIfAbsent(part.value(), part));
    }
    return names.values();
  }

  /** The test that holds for a part here, or why there is none. */
  Outcome<Tested> row(Text name) {
    Optional<RoofAttachment> part = catalogue.attachment(name.value());
    Optional<Panel> panel = site.plane().panel();
    if (part.isEmpty() || panel.isEmpty()) {
      String what = part.isEmpty() ? name.value() : site.plane().panelName();
      return new NotApplicable<>(what + " is not known");
    }
    return unknown(name, part.get(), panel.get())
        .<Outcome<Tested>>map(NotApplicable::new)
        .orElseGet(() -> Strengths.row(name, part.get(), panel.get()));
  }

  private Optional<String> unknown(Text name, RoofAttachment part, Panel panel) {
    if (isLost(name, "seam-clamps") || isLost(name, "rib-brackets")) {
      return Optional.of("not all tests of " + name + " could be read");
    }
    if (panel.metal().isEmpty()) {
      return Optional.of(site.ofPanel("the metal of the sheet", "metal"));
    }
    if (panel.thickness().isEmpty()) {
      return Optional.of(site.ofPanel("the thickness of the sheet", "thickness"));
    }
    boolean anywhere = part.tested().stream().anyMatch(row -> row.substrates().isEmpty());
    return panel.substrate().isEmpty() && !anywhere
        ? Optional.of(site.ofPanel("what the sheet rests on", "substrate"))
        : Optional.empty();
  }

  /** A test of which a value is lost may be another test than the one that was written. */
  private boolean isLost(Text name, String shelf) {
    return site.job().unreadable().touches("parts", shelf, name.value(), "tested");
  }

  /** Why the part of an attachment is not known, where it names none. */
  String unnamed() {
    String field = site.field().name();
    return site.job()
        .unreadable()
        .unwritten(
            "not every attachment of field " + field + " names its seam clamp or rib bracket",
            "the attachment of field " + field,
            "fields",
            field,
            "attachment");
  }
}
