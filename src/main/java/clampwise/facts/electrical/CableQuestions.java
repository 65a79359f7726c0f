package clampwise.facts.electrical;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.job.Cables;
import clampwise.job.ElectricalCode;
import clampwise.job.Quantity.Length;
import clampwise.job.Quantity.WireSize;
import clampwise.units.QuantityPrint;
import clampwise.units.Unit;
import java.util.Optional;

/** Asks how the cables under the modules are held, bent and kept clear. */
record CableQuestions(Wiring wiring, Cables cables) {

  static final Subject CABLES = Wiring.ELECTRICAL.part("cables");

  static void ask(Wiring wiring) {
    Optional<Cables> cables = wiring.electrical().cables();
    if (cables.isEmpty()) {
      wiring.missing(CableSupport.class, CABLES, wiring.lacks("how cables run", "cables"));
    } else {
      CableQuestions questions = new CableQuestions(wiring, cables.get());
      questions.askSpacing();
      questions.askFirst();
      questions.askClear();
      questions.askBend();
      new ClipQuestions(wiring, cables.get()).ask();
    }
  }

  /** Widest spacing of supports that the code allows, where it says one. */
  Outcome<Limit> mostSpacing() {
    return wiring
        .code()
        .then(code -> cables.wire().isEmpty() ? noWire() : outcome(limit(code, "spacing")));
  }

  private Outcome<Limit> noWire() {
    return new NotApplicable<>(lacks("the size of the cables", "wire"));
  }

  private static Outcome<Limit> outcome(Optional<Limit> limit) {
    return limit
        .<Outcome<Limit>>map(Outcome.Result::new)
        .orElseGet(() -> new NotApplicable<>("the code in force sets no spacing of supports"));
  }

  private Optional<Limit> limit(ElectricalCode code, String column) {
    double wireM2 = cables.wire().map(WireSize::m2).orElse(0.0);
    return new CodeLimits(wiring.tables().get("cable-supports"), code)
        .find(
            column,
            Unit.INCH,
            row ->
                row.find("wire-at-most")
                    .map(most -> WireSizes.snapped(wireM2, most) <= most)
                    .orElse(true));
  }

  private void askSpacing() {
    Outcome<Limit> most = mostSpacing();
    Optional<Length> spacing = cables.supportSpacing();
    if (spacing.isEmpty()) {
      missing(
          CableSupport.class, lacks("the spacing of the supports of cables", "support-spacing"));
    } else if (most instanceof NotApplicable<Limit> unknown) {
      missing(CableSupport.class, unknown.reason());
    } else {
      Limit limit = most.result().orElseThrow();
      wiring.answers().add(support(spacing.get(), limit));
    }
  }

  private CableSupport support(Length spacing, Limit limit) {
    String wire = cables.wire().map(w -> QuantityPrint.text(w.si(), w.unit())).orElse("");
    return new CableSupport(
        CABLES,
        spacing.at(),
        spacing.unit(),
        wire,
        Snap.m(spacing.m()),
        Snap.m(limit.si()),
        Optional.of(limit));
  }

  private void askFirst() {
    Optional<Limit> most = wiring.code().result().flatMap(code -> limit(code, "first"));
    if (most.isPresent() && cables.wire().isPresent()) {
      cables
          .firstSupport()
          .ifPresentOrElse(
              first -> wiring.answers().add(first(first, most.get())),
              () ->
                  missing(
                      FirstSupport.class, lacks("the first support of cables", "first-support")));
    }
  }

  private static FirstSupport first(Length first, Limit most) {
    return new FirstSupport(
        CABLES, first.at(), first.unit(), Snap.m(first.m()), Snap.m(most.si()), Optional.of(most));
  }

  private void askClear() {
    cables
        .touchRoof()
        .ifPresentOrElse(
            flag ->
                wiring.answers().add(new CableOnRoof(CABLES, flag.at(), Unit.NUMBER, flag.value())),
            () -> missing(CableOnRoof.class, lacks("whether cables touch the roof", "touch-roof")));
    cables
        .edgesGuarded()
        .ifPresentOrElse(
            flag ->
                wiring.answers().add(new CableEdges(CABLES, flag.at(), Unit.NUMBER, flag.value())),
            () -> missing(CableEdges.class, lacks("whether edges are guarded", "edges-guarded")));
  }

  private void askBend() {
    if (cables.bendRadius().isEmpty()) {
      missing(CableBend.class, lacks("the tightest bend of cables", "bend-radius"));
    } else if (cables.outerDiameter().isEmpty()) {
      missing(CableBend.class, lacks("the outer diameter of cables", "outer-diameter"));
    } else {
      wiring.answers().add(bend(cables.bendRadius().get(), cables.outerDiameter().get()));
    }
  }

  private CableBend bend(Length radius, Length diameter) {
    Limit over = wiring.limits().get("cable-bend-over-diameter");
    return new CableBend(
        CABLES,
        radius.at(),
        radius.unit(),
        Snap.m(radius.m()),
        diameter.m(),
        Snap.m(over.si() * diameter.m()),
        Optional.of(over));
  }

  private String lacks(String what, String key) {
    return wiring.lacks(what, "cables", key);
  }

  private void missing(Class<? extends Fact> type, String reason) {
    wiring.missing(type, CABLES, reason);
  }
}
