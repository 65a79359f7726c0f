package clampwise.facts.weight;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.facts.Question;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.Claims;
import clampwise.source.Span;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A field of a job that asks for an expedited permit.
 *
 * @param at where it asks for it
 */
record ExpeditedPath(WeighedField asked, Span at) {

  /** A question that is asked of every field of such a job. */
  static Question each(Consumer<ExpeditedPath> question) {
    return (layout, limits, answers) ->
        claimed(layout.job().claims())
            .ifPresent(
                at ->
                    WeighedField.each(field -> question.accept(new ExpeditedPath(field, at)))
                        .ask(layout, limits, answers));
  }

  /** Where a job asks for an expedited permit, if it does. */
  static Optional<Span> claimed(Optional<Claims> claims) {
    return claims
        .flatMap(Claims::path)
        .filter(path -> path.value() == Claims.Path.EXPEDITED)
        .map(Choice::at);
  }

  Limit limit(String key) {
    return asked.limits().get(key);
  }

  Subject subject(String what) {
    return cause(what).part(asked.subject().path());
  }

  static Subject cause(String what) {
    return Subject.of("claims", "expedited path", what);
  }

  void add(Fact fact) {
    asked.answers().add(fact);
  }

  void missing(Class<? extends Fact> question, String what, String reason) {
    asked.answers().missing(question, subject(what), reason, at);
  }
}
