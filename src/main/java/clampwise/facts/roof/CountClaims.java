package clampwise.facts.roof;

import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Question;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.Attachment.Kind;
import clampwise.facts.layout.Layout;
import clampwise.job.Claims;
import clampwise.job.Count;
import java.util.Optional;
import java.util.function.IntSupplier;
import java.util.function.Predicate;

/** Holds the counts the drawings state against what the layout holds. */
final class CountClaims implements Question {

  @Override
  public void ask(Layout layout, Limits limits, Answers answers) {
    layout.job().claims().ifPresent(claims -> ask(layout, claims, answers));
  }

  private static void ask(Layout layout, Claims claims, Answers answers) {
    Optional<String> unread = unread(layout);
    claims
        .modules()
        .ifPresent(count -> answer("modules", count, unread, () -> modules(layout), answers));
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
    Optional<String> unknown = unknown(layout);
    claimed.ifPresent(count -> answer(what, count, unknown, () -> count(layout, counts), answers));
  }

  private static void answer(
      String what, Count claimed, Optional<String> unknown, IntSupplier counted, Answers answers) {
    unknown.ifPresentOrElse(
        reason -> answers.missing(CountClaim.class, CountClaim.subject(what), reason, claimed.at()),
        () -> answers.add(CountClaim.of(what, claimed, counted.getAsInt())));
  }

  /** Why the attachments cannot be counted, if they cannot. */
  static Optional<String> unknown(Layout layout) {
    return unread(layout).or(() -> undrawn(layout));
  }

  /** What is missing of the layout because of another mistake is no difference to the drawing. */
  private static Optional<String> unread(Layout layout) {
    if (layout.job().unreadable().holds("fields")) {
      return Optional.of("the fields could not be read");
    }
    return layout.incomplete().stream()
        .findFirst()
        .map(field -> "field " + field + " could not be read or laid out as written");
  }

  private static Optional<String> undrawn(Layout layout) {
    return layout.fields().stream()
        .flatMap(field -> field.attachmentsUnknown().stream())
        .findFirst()
        .or(
            () ->
                layout.fields().stream()
                    .filter(field -> field.attachments().isEmpty())
                    .map(field -> "field " + field.name() + " has no attachments drawn")
                    .findFirst());
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
}
