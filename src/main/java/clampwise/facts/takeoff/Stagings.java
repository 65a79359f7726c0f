package clampwise.facts.takeoff;

import clampwise.calc.Snap;
import clampwise.calc.statics.ArrayWeight;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Building;
import clampwise.job.Panel;
import clampwise.job.Quantity.Area;
import clampwise.job.Quantity.Pressure;
import clampwise.job.Substrate;
import clampwise.job.Takeoff.Staging;
import clampwise.job.Takeoff.StandOn;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/** Asks whether the roof carries the pallets that are set on it. */
final class Stagings {

  private static final Subject STAGING = TakeoffAsked.TAKEOFF.part("staging");

  private final TakeoffAsked asked;
  private final Staging staging;
  private final ShownUnits units;

  private Stagings(TakeoffAsked asked, Staging staging) {
    this.asked = asked;
    this.staging = staging;
    this.units = ShownUnits.of(asked.layout());
  }

  static void ask(TakeoffAsked asked) {
    Optional<Staging> staging = asked.takeoff().staging();
    if (staging.isEmpty()) {
      String reason =
          asked.isLost("staging")
              ? "how the pallets stand on the roof could not be read"
              : "how the pallets stand on the roof is not given (takeoff: staging)";
      asked.missing(PalletPlace.class, STAGING, reason);
      asked.missing(StagedLoad.class, STAGING, reason);
    } else if (staging.get().on().value() != StandOn.GROUND) {
      new Stagings(asked, staging.get()).ask();
    }
  }

  private void ask() {
    Optional<String> unknown = Pallet.unknown(asked);
    for (PlaneLayout plane : asked.layout().planes()) {
      if (!plane.fields().isEmpty() && plane.panel().isPresent()) {
        if (unknown.isPresent()) {
          miss(plane, unknown.get());
        } else {
          ask(plane, plane.panel().get(), Pallet.fullest(asked, staging));
        }
      }
    }
  }

  private void miss(PlaneLayout plane, String reason) {
    asked.missing(PalletPlace.class, subject(plane), reason, staging.on().at());
    asked.missing(StagedLoad.class, subject(plane), reason, staging.on().at());
  }

  private static Subject subject(PlaneLayout plane) {
    return STAGING.part("plane " + plane.name());
  }

  private void ask(PlaneLayout plane, Panel panel, Pallet pallet) {
    if (staging.on().value() == StandOn.PANELS && panel.substrate().isEmpty()) {
      miss(plane, "what panel " + plane.panelName() + " rests on is not given (substrate)");
      return;
    }
    boolean open =
        panel.substrate().filter(under -> under.value() == Substrate.OPEN_PURLINS).isPresent();
    boolean onSheetAlone = open && staging.on().value() == StandOn.PANELS;
    asked
        .answers()
        .add(
            new PalletPlace(
                subject(plane),
                staging.on().at(),
                units.mass(),
                plane.panelName(),
                pallet.modules(),
                pallet.massKg(),
                onSheetAlone));
    if (!onSheetAlone) {
      askLoad(plane, pallet);
    }
  }

  private void askLoad(PlaneLayout plane, Pallet pallet) {
    Optional<Pressure> design = asked.layout().job().building().flatMap(Building::roofDesignLoad);
    if (design.isEmpty()) {
      String what = "the load that the roof was designed for";
      String reason =
          asked.layout().job().unreadable().missing(what, "building", "roof-design-load");
      asked.missing(StagedLoad.class, subject(plane), reason, staging.on().at());
    } else {
      asked.answers().add(load(plane, pallet, design.get()));
    }
  }

  private StagedLoad load(PlaneLayout plane, Pallet pallet, Pressure design) {
    double areaM2 = staging.spreadOver().map(Area::m2).filter(m2 -> m2 > 0).orElse(pallet.areaM2());
    Unit area = staging.spreadOver().map(Area::unit).orElse(units.area());
    ArrayWeight weight = ArrayWeight.ofMass(pallet.massKg());
    return new StagedLoad(
        subject(plane),
        staging.spreadOver().map(Area::at).orElse(staging.on().at()),
        design.unit(),
        Map.of("massKg", units.mass(), "areaM2", area, "needsM2", area),
        pallet.modules(),
        pallet.massKg(),
        areaM2,
        Snap.m(weight.pressurePa(areaM2)),
        Snap.m(design.pa()),
        weight.pressurePa(1) / design.pa());
  }
}
