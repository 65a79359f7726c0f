package clampwise.facts.loads;

import clampwise.facts.Answers;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.job.Claims;
import clampwise.job.Written;
import java.util.Optional;

/** Says which statements of the drawings cannot be checked where a field's loads are not known. */
record ClaimsUnknown(FieldSite site, String reason, Answers answers) {

  static void ask(FieldSite site, String reason, Answers answers) {
    ClaimsUnknown unknown = new ClaimsUnknown(site, reason, answers);
    site.job().claims().ifPresent(unknown::ask);
  }

  private void ask(Claims claims) {
    missing(
        PressureClaim.class,
        "pressures",
        claims.pressures().all().stream().findFirst().map(item -> item.name()));
    missing(EdgeFactorClaim.class, "edge factor", claims.edgeFactor());
    missing(EqualisationClaim.class, "equalisation factor", claims.equalisationFactor());
    missing(SlopeFactorClaim.class, "slope factor", claims.slopeFactor());
    missing(
        TributaryClaim.class,
        "tributary area",
        claims.tributary().flatMap(areas -> areas.innerLine().or(areas::edgeLine)));
  }

  private void missing(
      Class<? extends Fact> question, String what, Optional<? extends Written> stated) {
    Subject subject = Subject.of("claims", what, "fields." + site.field().name());
    stated.ifPresent(written -> answers.missing(question, subject, reason, written.at()));
  }
}
