package clampwise.facts.roof;

import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Question;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.Attachment.Kind;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.finding.Subject;
import clampwise.job.Claims;
import clampwise.job.Count;
import clampwise.units.Unit;
import java.util.Optional;
import java.util.function.Predicate;

/** Holds the counts the drawings state against what the layout holds. */
final class CountClaims implements Question {

  @Override
  public void ask(Layout layout, Limits limits, Answers answers) {
    layout.job().claims().ifPresent(claims -> ask(layout, claims, answers));
  }

  private static void ask(Layout layout, Claims claims, Answers answers) {
    claims.modules().ifPresent(count -> answers.add(fact("modules", count, modules(layout))));
    parts("attachments", claims.attachments(), each -> true, layout, answers);
    parts("mid clamps", claims.midClamps(), each -> each.kind() == Kind.MID, layout, answers);
    parts("end clamps", claims.endClamps(), each -> each.kind() == Kind.END, layout, answers);
  }

  private static void parts(
      String what,
      Optional<Count> claimed,
      Predicate<Attachment> counts,
      Layout layout,
      Answers answers) {
    Optional<FieldLayout> undrawn =
        layout.fields().stream().filter(field -> field.attachments().isEmpty()).findFirst();
    if (claimed.isPresent() && undrawn.isPresent()) {
      String reason = "field " + undrawn.get().name() + " has no attachments drawn";
      answers.missing(CountClaim.class, subject(what), reason, claimed.get().at());
    } else {
      claimed.ifPresent(count -> answers.add(fact(what, count, count(layout, counts))));
    }
  }

  private static int modules(Layout layout) {
    return layout.fields().stream().mapToInt(field -> field.modules().size()).sum();
  }

  private static int count(Layout layout, Predicate<Attachment> counts) {
    return (int)
        layout.fields().stream()
            .flatMap(field -> field.attachments().stream())
            .filter(counts)
            .count();
  }

  private static CountClaim fact(String what, Count claimed, int counted) {
    return new CountClaim(
        subject(what),
        subject(what),
        claimed.at(),
        Unit.NUMBER,
        what,
        claimed.value(),
        counted,
        Math.abs(claimed.value() - counted));
  }

  private static Subject subject(String what) {
    return Subject.of("claims", what);
  }
}
