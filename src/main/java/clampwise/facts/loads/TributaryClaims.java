package clampwise.facts.loads;

import clampwise.calc.Snap;
import clampwise.facts.layout.Attachment;
import clampwise.facts.loads.Shares.Share;
import clampwise.finding.Subject;
import clampwise.job.Quantity.Area;
import clampwise.units.Units;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Holds the tributary areas that the drawings state against those of a field: an inner line carries
 * half of each of its two rows and the gap between them, an edge line half of its row.
 */
final class TributaryClaims {

  private static final double HALF = 0.5;
  private static final double STEP_M2 = 0.01;

  private final ClaimedLoads asked;
  private final Shares shares;

  private TributaryClaims(ClaimedLoads asked, Shares shares) {
    this.asked = asked;
    this.shares = shares;
  }

  static void ask(ClaimedLoads asked, Shares shares) {
    asked
        .claims()
        .tributary()
        .ifPresent(
            stated -> {
              TributaryClaims claims = new TributaryClaims(asked, shares);
              stated.innerLine().ifPresent(area -> claims.ask(area, true));
              stated.edgeLine().ifPresent(area -> claims.ask(area, false));
            });
  }

  private void ask(Area stated, boolean inner) {
    Optional<Attachment> most =
        asked.site().field().attachments().stream()
            .filter(attachment -> shares.of(attachment).size() == (inner ? 2 : 1))
            .max(Comparator.comparingDouble(this::areaM2));
    most.ifPresent(attachment -> asked.answers().add(fact(stated, inner, attachment)));
  }

  /** Half of each module by tributary width, with the gap between two rows. */
  private double areaM2(Attachment attachment) {
    List<Share> own = shares.of(attachment);
    double halvesM2 = own.stream().mapToDouble(Share::tributaryM2).sum();
    if (own.size() < 2) {
      return halvesM2;
    }
    double widthsM =
        own.stream()
            .mapToDouble(share -> share.tributaryM2() / (share.module().upM() * HALF))
            .sum();
    return halvesM2 + asked.site().field().rowGapM() * widthsM * HALF;
  }

  private TributaryClaim fact(Area stated, boolean inner, Attachment attachment) {
    String line = inner ? "inner line" : "edge line";
    Subject cause = Subject.of("claims", "tributary area", line);
    double computedM2 = areaM2(attachment);
    double stepM2 = stated.unit().equals(Units.SQUARE_FOOT) ? Units.SQUARE_FOOT.toSi(0.1) : STEP_M2;
    double withinHalf = asked.site().limits().get("half-line-within").si();
    boolean half = Math.abs(stated.m2() / computedM2 - HALF) < withinHalf;
    return new TributaryClaim(
        asked.subject(cause),
        cause,
        stated.at(),
        stated.unit(),
        asked.field(),
        line,
        inner ? "half of each of its two rows and the gap" : "half of its row",
        attachment.name(),
        Snap.m(stated.m2()),
        half ? half(inner) : "",
        Snap.m(computedM2),
        asked.least(computedM2, stepM2));
  }

  private static String half(boolean inner) {
    return inner ? ", as on an edge line, half a row only" : ", a quarter of a row only";
  }
}
