package clampwise.facts.clamps;

import clampwise.catalogue.Catalogue;
import clampwise.catalogue.ClampFits;
import clampwise.catalogue.Fits;
import clampwise.facts.clamps.ClampUse.Role;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.Attachment.Kind;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.job.Flag;
import clampwise.job.ModuleClamp;
import clampwise.job.Named;
import clampwise.job.Text;
import clampwise.units.Unit;
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
   * What to use where a clamp does not grip a frame height, in a text such as {@code A or B}; only
   * bonding ones where this one is bonding.
   */
  String gripping(ClampUse instead, double frameHeightM, Unit unit) {
    return told(ClampFits.in(all).gripping(frameHeightM, unit), instead);
  }

  /** Clamps that grip the frames of a field in the gap between its rows. */
  ClampFits suiting(FieldLayout field, ClampUse instead) {
    ClampFits fits = ClampFits.in(all);
    field.type().frameHeight().ifPresent(h -> fits.gripping(h.m(), h.unit()));
    return instead.role() == Role.MID ? fits.across(field.rowGapM()) : fits;
  }

  /** Clamps of the kind of another one that also bond if that one does, or why there are none. */
  String told(ClampFits wanted, ClampUse instead) {
    ClampFits all = wanted.bonding(instead.clamp().bonding().filter(Flag::value).isPresent());
    Fits fits = instead.role() == Role.MID ? all.mid() : all.end();
    return fits.without(instead.name().value()).told("another " + instead.role().word());
  }
}
