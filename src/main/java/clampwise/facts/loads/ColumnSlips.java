package clampwise.facts.loads;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.combination.Method;
import clampwise.calc.statics.LimitState;
import clampwise.calc.statics.SlopeSum;
import clampwise.calc.statics.TestedLoad;
import clampwise.calc.trail.Chain;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Section;
import clampwise.calc.trail.Work;
import clampwise.catalogue.Limit;
import clampwise.facts.Answers;
import clampwise.facts.layout.Attachment;
import clampwise.finding.Subject;
import clampwise.job.Text;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Holds the force down the slope of each column against the slip strengths of its attachments.
 *
 * @param <S> the limit state of loads and strengths
 */
final class ColumnSlips<S extends LimitState> {

  private final FieldLoads loads;
  private final FieldSite site;
  private final FieldParts parts;
  private final Strengths.Conversion<S> conversion;
  private final Answers answers;
  private final Map<String, Outcome<Double>> slips = new HashMap<>();

  private ColumnSlips(LoadedField field, Strengths.Conversion<S> conversion, Answers answers) {
    this.loads = field.loads();
    this.site = field.site();
    this.parts = new FieldParts(site);
    this.conversion = conversion;
    this.answers = answers;
  }

  static void ask(LoadedField field, Answers answers) {
    if (field.loads().standard().method() == Method.ASD) {
      new ColumnSlips<LimitState.Asd>(field, TestedLoad::allowable, answers).ask();
    } else {
      new ColumnSlips<LimitState.Lrfd>(field, field.loads().standard().design(), answers).ask();
    }
  }

  private void ask() {
    if (loads.snowUnknown().isPresent()) {
      missing(site.subject().part("columns"), loads.snowUnknown().get());
      return;
    }
    Map<String, Integer> edges = SlopeColumn.edges(loads);
    SlopeColumn.of(loads).forEach((number, column) -> ask(number, column, edges));
  }

  private void ask(int number, SlopeColumn column, Map<String, Integer> edges) {
    if (column.attachments() == 0) {
      missing(subject(number), "no attachment holds column " + number);
      return;
    }
    Outcome<Double> strengthN = column.strengthN(edges, this::slipN);
    if (strengthN instanceof Result<Double> known) {
      answers.add(fact(number, column, known.value()));
    } else if (strengthN instanceof NotApplicable<Double> none) {
      missing(subject(number), none.reason());
    }
  }

  /** What an attachment may take along its seam [N], found once for each part. */
  private Outcome<Double> slipN(Attachment attachment) {
    return attachment
        .part()
        .map(part -> slips.computeIfAbsent(part.value(), name -> slipN(part)))
        .orElseGet(() -> new NotApplicable<>(parts.unnamed()));
  }

  private Outcome<Double> slipN(Text part) {
    return parts
        .row(part)
        .then(row -> Strengths.of(part, row, loads.standard().method(), conversion, Work.unread()))
        .then(
            strong ->
                strong
                    .resistance()
                    .slope()
                    .<Outcome<Double>>map(slope -> new Result<>(slope.forceN()))
                    .orElseGet(() -> new NotApplicable<>(unstated(part))));
  }

  private static String unstated(Text part) {
    return "the tests of "
        + part
        + " do not state what it may take along the slope (tested: along)";
  }

  private ColumnSlip fact(int number, SlopeColumn column, double strengthN) {
    Limit most = site.limits().get("utilisation-most");
    int governing = column.governing();
    double demandN = column.demandN(governing);
    double share = demandN / strengthN;
    Unit force = PlaneLoads.forceUnit(site);
    return new ColumnSlip(
        subject(number),
        site.subject().part("columns"),
        column.first().at(),
        Unit.NUMBER,
        Map.of("demandN", force, "strengthN", force),
        site.field().name(),
        number,
        loads.standard().combinations().get(governing).name(),
        column.attachments(),
        demandN,
        strengthN,
        Math.rint(share * 1e9) / 1e9,
        most.si(),
        site.limits().get("utilisation-note").si(),
        more(column.attachments(), share / most.si()),
        Optional.of(new SlipChain(site.measure(), number, demandN, strengthN)),
        Optional.of(most));
  }

  private record SlipChain(Measure measure, int column, double demandN, double strengthN)
      implements Chain {

    @Override
    public List<Section> sections() {
      ChainWriter chain = new ChainWriter(measure);
      chain.deciding("Column " + column + " down the slope", this::share);
      return chain.sections();
    }

    private void share(Work work) {
      SlopeSum.column(demandN, strengthN, work);
    }

    @Override
    public String toString() {
      return "how column " + column + " is held";
    }
  }

  /** How many attachments of the same strength have to come to those there are. */
  private static int more(int attachments, double share) {
    return Math.max(0, (int) Math.ceil(attachments * share - attachments - 1e-9));
  }

  private Subject subject(int number) {
    return site.subject().part("column " + number);
  }

  private void missing(Subject subject, String reason) {
    Span at = site.field().at();
    answers.missing(ColumnSlip.class, subject, reason, at);
  }
}
