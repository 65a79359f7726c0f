package clampwise.facts.loads;

import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.finding.Subject;
import clampwise.job.Quantity.Factor;
import clampwise.units.Unit;
import java.util.Comparator;
import java.util.Optional;

/** Holds the largest share of strength in use that the drawings state against the computed one. */
final class UtilisationClaims {

  private static final Subject STATED = Subject.of("claims", "utilisation");
  private static final double STEPS = 100;

  private UtilisationClaims() {}

  /** To be asked when the shares of all attachments are known. */
  static void ask(Factor stated, Limits limits, Answers answers) {
    Optional<AttachmentUse> most =
        answers.facts().stream()
            .filter(AttachmentUse.class::isInstance)
            .map(AttachmentUse.class::cast)
            .max(Comparator.comparingDouble(AttachmentUse::utilisation));
    most.ifPresentOrElse(
        use -> answers.add(fact(stated, use, limits.get("claim-below-most").si())),
        () ->
            answers.missing(
                UtilisationClaim.class,
                STATED,
                "no attachment's share of its strength could be computed",
                stated.at()));
  }

  private static UtilisationClaim fact(Factor stated, AttachmentUse use, double below) {
    return new UtilisationClaim(
        STATED,
        STATED,
        stated.at(),
        Unit.NUMBER,
        use.attachment(),
        stated.value(),
        use.utilisation(),
        Math.rint(use.utilisation() * (1 - below) * STEPS) / STEPS);
  }
}
