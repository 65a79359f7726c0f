package clampwise.facts.bonding;

import clampwise.facts.Question;
import java.util.List;

/** All questions about bonding. */
public final class BondingQuestions {

  public static final List<Question> ALL =
      List.of(
          GroundPaths::ask, JumperReaches::ask, BondRatings::ask, BondReuses::ask, BondClaims::ask);

  private BondingQuestions() {}
}
