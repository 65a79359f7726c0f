package clampwise.facts.loads;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.combination.Method;
import clampwise.calc.statics.TestedLoad.Meaning;
import clampwise.facts.Answers;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.Loads;
import clampwise.job.Tested;
import clampwise.job.Text;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/** Asks whether loads and strengths of a field belong to one limit state. */
final class MixedStates {

  private final FieldSite site;
  private final Standard standard;
  private final Answers answers;

  private MixedStates(FieldSite site, Standard standard, Answers answers) {
    this.site = site;
    this.standard = standard;
    this.answers = answers;
  }

  static void ask(FieldSite site, Standard standard, Answers answers) {
    MixedStates states = new MixedStates(site, standard, answers);
    FieldParts parts = new FieldParts(site);
    parts.names().forEach(name -> states.ask(name, parts.row(name)));
  }

  private void ask(Text name, Outcome<Tested> row) {
    Subject subject = site.subject().part("attachment " + name);
    if (row instanceof Result<Tested> test) {
      if (test.value().loadsAre().isPresent()) {
        answers.add(fact(name, subject, test.value()));
      } else {
        String reason =
            "whether the loads of "
                + name
                + " are allowable, ultimate or design is not given (loads-are)";
        answers.missing(LimitStates.class, subject, reason, name.at());
      }
    } else if (row instanceof NotApplicable<Tested> none) {
      answers.missing(LimitStates.class, subject, none.reason(), name.at());
    }
  }

  private LimitStates fact(Text name, Subject subject, Tested row) {
    Meaning meaning = Strengths.meaning(row);
    boolean service = standard.method() == Method.ASD;
    return new LimitStates(
        subject,
        subject,
        at(name),
        Unit.NUMBER,
        site.field().name(),
        name.value(),
        row.report().map(report -> "test " + report.value()).orElse("its test"),
        standard.words().loads(),
        standard.words().of(meaning),
        standard.words().remedy(),
        meaning == (service ? Meaning.DESIGN : Meaning.ALLOWABLE));
  }

  private Span at(Text name) {
    Optional<Span> written = site.loads(Loads::method).map(Choice::at);
    return standard.words().equals(StateWords.EUROCODE) ? name.at() : written.orElse(name.at());
  }
}
