package clampwise.facts.clamps;

import clampwise.catalogue.Catalogue;
import clampwise.catalogue.ClampFits;
import clampwise.facts.clamps.ClampUse.Role;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.Attachment.Kind;
import clampwise.facts.layout.Layout;
import clampwise.job.Flag;
import clampwise.job.ModuleClamp;
import clampwise.job.Named;
import clampwise.job.Text;
import java.util.Optional;

/** The mid and end clamps a job can use: its own before those of the catalogue. */
record ClampParts(Catalogue all) {

  static ClampParts of(Layout layout) {
    return new ClampParts(layout.catalogue().with(layout.job()));
  }

  /** The clamp on an attachment, if it is named and known. */
  Optional<ClampUse> on(Attachment attachment) {
    Role first = attachment.kind() == Kind.END ? Role.END : Role.MID;
    Role second = first == Role.MID ? Role.END : Role.MID;
    return attachment.clamp().flatMap(name -> find(name, first).or(() -> find(name, second)));
  }

  Optional<ClampUse> find(Text name, Role role) {
    Named<ModuleClamp> clamps =
        role == Role.MID ? all.parts().midClamps() : all.parts().endClamps();
    return clamps.find(name.value()).map(clamp -> new ClampUse(name, role, clamp));
  }

  /**
   * The clamps that grip a frame height where this one does not, in a text such as {@code A or B};
   * only bonding ones where this one is bonding.
   */
  Optional<String> gripping(ClampUse instead, double frameHeightM) {
    boolean bonding = instead.clamp().bonding().filter(Flag::value).isPresent();
    return instead.role() == Role.MID
        ? ClampFits.mid(all, frameHeightM, bonding).best()
        : ClampFits.end(all, frameHeightM, bonding).best();
  }
}
