package clampwise.facts.roof;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.Snap;
import clampwise.calc.ZoneWidth.Widths;
import clampwise.calc.en.EnTables;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Question;
import clampwise.facts.layout.EnPlane;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.layout.WindRoof;
import clampwise.finding.Subject;
import clampwise.job.Claims;
import clampwise.job.Quantity.Length;
import clampwise.job.Site.LoadCode;

/** Holds the zone width the drawings state against the width each plane's roof asks for. */
final class ZoneWidthClaims implements Question {

  @Override
  public void ask(Layout layout, Limits limits, Answers answers) {
    layout
        .job()
        .claims()
        .flatMap(Claims::zoneWidth)
        .ifPresent(claimed -> layout.planes().forEach(p -> ask(layout, p, claimed, answers)));
  }

  private static void ask(Layout layout, PlaneLayout plane, Length claimed, Answers answers) {
    Outcome<Widths> widths = widths(layout, plane);
    if (widths instanceof Result<Widths> known) {
      answers.add(fact(plane, claimed, known.value()));
    } else if (widths instanceof NotApplicable<Widths> unknown) {
      answers.missing(ZoneWidthClaim.class, subject(plane), unknown.reason(), claimed.at());
    }
  }

  /** Under EN 1991-1-4 the strip behind a windward edge is what drawings give a width for. */
  private static Outcome<Widths> widths(Layout layout, PlaneLayout plane) {
    WindRoof roof = new WindRoof(layout.job(), plane.plane(), layout.catalogue().codes());
    return roof.code().filter(LoadCode.EN_1991::equals).isPresent()
        ? european(roof, plane, layout.catalogue().codes().windOfEn())
        : roof.widths();
  }

  private static Outcome<Widths> european(WindRoof roof, PlaneLayout plane, EnTables tables) {
    return EnPlane.of(roof, plane.outline(), tables).then(en -> new Result<>(en.widths(tables)));
  }

  private static ZoneWidthClaim fact(PlaneLayout plane, Length claimed, Widths widths) {
    return new ZoneWidthClaim(
        subject(plane),
        Subject.of("claims", "zone width"),
        claimed.at(),
        claimed.unit(),
        plane.name(),
        "figure " + widths.figure(),
        Snap.m(claimed.m()),
        Snap.m(widths.edgeM()));
  }

  private static Subject subject(PlaneLayout plane) {
    return Subject.of("claims", "zone width", "planes." + plane.name());
  }
}
