package clampwise.facts.durability;

import clampwise.calc.corrosion.Couple;
import clampwise.catalogue.Limit;
import clampwise.facts.durability.Contact.Size;
import clampwise.job.SurfaceMetal;
import clampwise.units.Unit;
import java.util.Optional;

/** Judges contacts of metals in four steps: pair, potential, area, air. */
record Couples(Weathering weathering, CoupleTables tables, Optional<Air> air) {

  static Couples of(Weathering weathering) {
    return new Couples(weathering, CoupleTables.of(weathering), Air.of(weathering));
  }

  /** A pair with the nobler metal first. */
  private record Pair(SurfaceMetal noble, SurfaceMetal active, double differenceV) {}

  void ask(Contact contact, boolean onSheet) {
    MetalCouple couple = fact(contact);
    weathering.add(couple);
    if (onSheet && couple.accepted() && couple.differenceV() > couple.mostV()) {
      air.ifPresentOrElse(
          known -> weathering.add(inAir(couple, known)),
          () -> weathering.missing(CoupleInAir.class, contact.subject(), Air.unknown(weathering)));
    }
  }

  boolean isNever(SurfaceMetal one, SurfaceMetal other) {
    Pair pair = pair(one, other);
    return tables.isNever(pair.noble(), pair.active());
  }

  private MetalCouple fact(Contact contact) {
    SurfaceMetal part = contact.part().metal();
    Pair pair = pair(part, contact.base().metal());
    Limit most = tables.most(air);
    boolean never = tables.isNever(pair.noble(), pair.active());
    boolean small = contact.size() == Size.SMALL && pair.differenceV() > 0;
    boolean smallActive = small && part == pair.active();
    boolean usual = tables.isUsual(pair.noble(), pair.active());
    return new MetalCouple(
        contact.subject(),
        contact.cause(),
        contact.at(),
        Unit.NUMBER,
        contact.part().words(),
        contact.base().words(),
        never,
        pair.differenceV(),
        most.si(),
        smallActive,
        !never && !smallActive && (usual || small),
        contact.isolated(),
        contact.cure(),
        Optional.of(most));
  }

  private Pair pair(SurfaceMetal one, SurfaceMetal other) {
    Couple couple = new Couple(tables.indexV(one), tables.indexV(other));
    return couple.isFirstNobler()
        ? new Pair(one, other, couple.differenceV())
        : new Pair(other, one, couple.differenceV());
  }

  private CoupleInAir inAir(MetalCouple couple, Air known) {
    return new CoupleInAir(
        couple.subject(),
        couple.cause(),
        couple.at(),
        Unit.NUMBER,
        couple.part(),
        couple.base(),
        known.word(),
        tables.needsPad(known),
        couple.isolated(),
        couple.differenceV(),
        couple.limitFrom());
  }
}
