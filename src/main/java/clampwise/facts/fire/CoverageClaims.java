package clampwise.facts.fire;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.roof.Shown;
import clampwise.finding.Subject;
import clampwise.job.Claims;
import clampwise.job.Quantity.Factor;
import clampwise.units.Unit;
import clampwise.units.Units;
import java.util.Map;

/** Holds the coverage that the drawings state against the one computed from plan areas. */
final class CoverageClaims {

  private static final Subject COVERAGE = Subject.of("claims", "roof coverage");

  private CoverageClaims() {}

  static void ask(Layout layout, Limits limits, Answers answers) {
    layout
        .job()
        .claims()
        .flatMap(Claims::roofCoverage)
        .ifPresent(claimed -> ask(layout, claimed, limits.get("claim-below-most"), answers));
  }

  private static void ask(Layout layout, Factor claimed, Limit most, Answers answers) {
    Outcome<Coverage> coverage = Coverage.of(layout);
    if (coverage instanceof Result<Coverage> known) {
      answers.add(fact(claimed, known.value(), most, area(layout)));
    } else if (coverage instanceof NotApplicable<Coverage> unknown) {
      answers.missing(CoverageClaim.class, COVERAGE, unknown.reason(), claimed.at());
    }
  }

  private static Unit area(Layout layout) {
    return layout.planes().stream()
        .findFirst()
        .map((PlaneLayout plane) -> Shown.of(plane))
        .filter(unit -> unit.equals(Unit.FOOT) || unit.equals(Unit.INCH))
        .map(imperial -> Units.SQUARE_FOOT)
        .orElse(Units.SQUARE_METRE);
  }

  private static CoverageClaim fact(Factor claimed, Coverage known, Limit most, Unit area) {
    return new CoverageClaim(
        COVERAGE,
        COVERAGE,
        claimed.at(),
        Unit.NUMBER,
        Map.of("arrayM2", area, "roofM2", area),
        claimed.value(),
        known.share(),
        Snap.m(Math.abs(claimed.value() - known.share())),
        Snap.m(most.si() * known.share()),
        Snap.m(known.onSlopeM2() / known.roofM2()),
        known.arrayM2(),
        known.roofM2(),
        java.util.Optional.of(most));
  }
}
