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
    return Strengths.row(name, part.get(), panel.get());
  }
}
