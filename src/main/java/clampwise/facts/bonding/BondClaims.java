package clampwise.facts.bonding;

import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.layout.Layout;
import clampwise.facts.roof.CountClaim;
import clampwise.job.Bonding;
import clampwise.job.Claims;
import clampwise.job.Count;
import clampwise.source.Span;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;

/** Holds the jumpers and lugs the drawings count against those that are drawn. */
final class BondClaims {

  private final Layout layout;
  private final Answers answers;

  private BondClaims(Layout layout, Answers answers) {
    this.layout = layout;
    this.answers = answers;
  }

  static void ask(Layout layout, Limits limits, Answers answers) {
    Optional<Claims> claims = layout.job().claims();
    if (claims.isPresent()) {
      BondClaims own = new BondClaims(layout, answers);
      own.ask("jumpers", claims.get().jumpers(), bonding -> BondGraph.jumpers(layout, bonding));
      own.ask("lugs", claims.get().lugs(), bonding -> bonding.lugs().size());
    }
  }

  private void ask(String what, Optional<Count> claimed, ToIntFunction<Bonding> counted) {
    if (claimed.isPresent()) {
      unknown()
          .ifPresentOrElse(
              reason -> missing(what, reason, claimed.get()),
              () -> answers.add(claim(what, claimed.get(), count(counted))));
    }
  }

  /** A count that is over by what the ground paths lack is right, and the drawing is not. */
  private CountClaim claim(String what, Count claimed, int counted) {
    int over = claimed.value() - counted;
    List<Span> lacking =
        over > 0 && layout.job().bonding().isPresent()
            ? Lacking.of(layout, layout.job().bonding().get()).at(what, over)
            : List.of();
    return lacking.isEmpty()
        ? CountClaim.of(what, claimed, counted)
        : CountClaim.lacking(
            what, claimed, counted, "add the " + over + " that the ground paths lack", lacking);
  }

  private void missing(String what, String reason, Count claimed) {
    answers.missing(CountClaim.class, CountClaim.subject(what), reason, claimed.at());
  }

  private int count(ToIntFunction<Bonding> counted) {
    return layout.job().bonding().map(counted::applyAsInt).orElse(0);
  }

  private Optional<String> unknown() {
    return layout.job().bonding().isEmpty()
        ? Optional.of(Unsaid.reason(layout))
        : Unread.all(layout)
            .or(
                () ->
                    layout.incomplete().stream()
                        .findFirst()
                        .map(f -> "field " + f + " could not be read or laid out as written"));
  }
}
