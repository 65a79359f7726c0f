package clampwise.takeoff;

import clampwise.catalogue.Catalogue;
import clampwise.facts.layout.Layout;
import clampwise.job.Parts;
import java.util.Optional;

/** Tells the kinds of parts by their names. */
public final class PartKinds {

  private final Catalogue catalogue;

  private PartKinds(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** The parts and module types that a layout may name. */
  public static PartKinds of(Layout layout) {
    return new PartKinds(layout.catalogue().with(layout.job()));
  }

  /** The kind of an attachment. */
  PartKind attachment(String name) {
    if (parts().seamClamps().find(name).isPresent()) {
      return PartKind.SEAM_CLAMP;
    }
    return parts().ribBrackets().find(name).isPresent()
        ? PartKind.RIB_BRACKET
        : PartKind.ATTACHMENT;
  }

  /** The kind of any part or module type, if its name is known. */
  public Optional<PartKind> of(String name) {
    for (PartKind kind : PartKind.values()) {
      if (isOf(kind, name)) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }

  private boolean isOf(PartKind kind, String name) {
    return switch (kind) {
      case MODULE -> catalogue.modules().names().contains(name);
      case SEAM_CLAMP -> parts().seamClamps().names().contains(name);
      case RIB_BRACKET -> parts().ribBrackets().names().contains(name);
      case ATTACHMENT -> false;
      case MID_CLAMP -> parts().midClamps().names().contains(name);
      case END_CLAMP -> parts().endClamps().names().contains(name);
      case JUMPER -> parts().jumpers().names().contains(name);
      case LUG -> parts().lugs().names().contains(name);
      case WIRE_CLIP -> parts().wireClips().names().contains(name);
    };
  }

  private Parts parts() {
    return catalogue.parts();
  }
}
