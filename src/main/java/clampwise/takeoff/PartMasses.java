package clampwise.takeoff;

import clampwise.catalogue.Catalogue;
import clampwise.facts.layout.Layout;
import clampwise.job.BondingPart;
import clampwise.job.ModuleClamp;
import clampwise.job.ModuleType;
import clampwise.job.Named;
import clampwise.job.Parts;
import clampwise.job.Quantity.Mass;
import clampwise.job.RoofAttachment;
import clampwise.job.WireClip;
import java.util.Optional;

/** Finds what parts weigh. */
public final class PartMasses {

  private final Catalogue catalogue;

  private PartMasses(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** Of the parts and module types that a layout may name. */
  public static PartMasses of(Layout layout) {
    return new PartMasses(layout.catalogue().with(layout.job()));
  }

  /** Mass of one, if it is known [kg]. */
  public Optional<Double> eachKg(Part part) {
    return mass(part.kind(), part.name()).map(Mass::kg);
  }

  private Optional<Mass> mass(PartKind kind, String name) {
    Parts parts = catalogue.parts();
    return switch (kind) {
      case MODULE -> catalogue.modules().find(name).flatMap(ModuleType::mass);
      case SEAM_CLAMP, RIB_BRACKET, ATTACHMENT ->
          catalogue.attachment(name).flatMap(RoofAttachment::mass);
      case MID_CLAMP, END_CLAMP -> clamp(parts, name).flatMap(ModuleClamp::mass);
      case JUMPER -> bond(parts.jumpers(), name);
      case LUG -> bond(parts.lugs(), name);
      case WIRE_CLIP -> parts.wireClips().find(name).flatMap(WireClip::mass);
    };
  }

  /** A drawing may set any clamp at any place. */
  private static Optional<ModuleClamp> clamp(Parts parts, String name) {
    return parts.midClamps().find(name).or(() -> parts.endClamps().find(name));
  }

  private static Optional<Mass> bond(Named<BondingPart> shelf, String name) {
    return shelf.find(name).flatMap(BondingPart::mass);
  }
}
