package clampwise.facts.loads;

import clampwise.calc.Outcome;
import clampwise.calc.combination.Combination;
import clampwise.calc.statics.Demand;
import clampwise.calc.statics.LimitState;
import clampwise.calc.statics.ModuleOnClamps;
import clampwise.calc.statics.Utilisation;
import clampwise.calc.trail.Chain;
import clampwise.calc.trail.Section;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.facts.layout.Attachment;
import clampwise.facts.loads.Demands.Used;
import clampwise.facts.loads.Shares.Share;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How the share of an attachment's strength was got.
 *
 * @param <S> the limit state of loads and strengths
 */
final class AttachmentChain<S extends LimitState> implements Chain {

  private static final double SAME = 1e-9;

  private final FieldLoads loads;
  private final Shares shares;
  private final Attachment attachment;
  private final Used used;
  private final Strengths<S> strengths;
  private final Strengths.Conversion<S> conversion;

  private AttachmentChain(Subject subject, Strengths<S> strengths, Strengths.Conversion<S> by) {
    this.loads = subject.loads;
    this.shares = subject.shares;
    this.attachment = subject.attachment;
    this.used = subject.used;
    this.strengths = strengths;
    this.conversion = by;
  }

  /** What the chain is about. */
  record Subject(FieldLoads loads, Shares shares, Attachment attachment, Used used) {}

  static <S extends LimitState> AttachmentChain<S> of(
      Subject subject, Strengths<S> strengths, Strengths.Conversion<S> by) {
    return new AttachmentChain<>(subject, strengths, by);
  }

  @Override
  public List<Section> sections() {
    ChainWriter chain = new ChainWriter(loads.site().measure());
    List<Share> own = shares.of(attachment);
    ModuleWork modules = new ModuleWork(loads);
    modules.factors(combination(), true, chain);
    modules.write(own.stream().map(Share::module).distinct().toList(), combination(), up(), chain);
    Forces forces = new Forces();
    own.forEach(
        share ->
            chain.section(
                "From " + share.module().name() + " to " + attachment.name(),
                work -> add(share, own.get(0), forces, work)));
    chain.deciding("On " + attachment.name(), work -> sums(forces, work));
    chain.section("Strength of " + attachment.part().orElseThrow(), this::strength);
    chain.deciding("Share of the strength of " + attachment.name(), this::share);
    return chain.sections();
  }

  private Combination combination() {
    return loads.standard().combinations().get(used.force().combination());
  }

  private boolean up() {
    return used.force().normalN() > 0;
  }

  /** What each module edge brings: down the slope, and across the surface. */
  private record Forces(List<Term> along, List<Term> across) {

    Forces() {
      this(new ArrayList<>(), new ArrayList<>());
    }
  }

  private void add(Share share, Share first, Forces forces, Work work) {
    int number = forces.along.size() + 1;
    forces.along.add(along(share, number, work));
    forces.across.add(
        number == 1 || !isLike(share, first)
            ? across(share, number, work)
            : again(forces.across.get(0), number, share, work));
  }

  private void sums(Forces forces, Work work) {
    sum("E", "force down the slope", forces.along, work);
    sum("N", up() ? "uplift" : "pressure, as a force", forces.across, work);
  }

  /** Whether two module edges bring the same by the same calculation. */
  private boolean isLike(Share one, Share other) {
    double oneM2 = one.areaM2();
    return Math.abs(oneM2 - other.areaM2()) <= SAME * Math.abs(oneM2)
        && netPa(one) == netPa(other)
        && one.module().upM() == other.module().upM();
  }

  private static Term again(Term first, int number, Share share, Work work) {
    Term force = Term.force("N_m" + number, "from " + share.module().name(), first.si());
    work.write(force, first.symbol(), Source.STATICS, first);
    return force;
  }

  private Term along(Share share, int number, Work work) {
    int k = used.force().combination();
    double pressurePa = loads.of(share.module()).alongPa()[k];
    double depthM = share.module().upM();
    Term force =
        Term.force(
            "E_" + number,
            "down the slope, from " + share.module().name(),
            pressurePa * share.tributaryM2());
    work.write(
        force,
        "q_along*b*d/2",
        Source.STATICS,
        Term.pressure("q_along", "down the slope", pressurePa),
        Term.length("b", "width of edge nearest to it", share.tributaryM2() * 2 / depthM),
        Term.length("d", "distance of the supported edges", depthM));
    return force;
  }

  private Term across(Share share, int number, Work work) {
    double netPa = netPa(share);
    String symbol = up() ? "q_up" : "q_down";
    double pressurePa = up() ? -netPa : netPa;
    work.write(
        Term.pressure("p_" + number, "net pressure on " + share.module().name(), pressurePa),
        up() ? "0-q_up" : "q_down",
        Source.STATICS,
        Term.pressure(symbol, "net pressure across the surface", netPa));
    Term force =
        Term.force("N_m" + number, "from " + share.module().name(), pressurePa * share.areaM2());
    Outcome<List<Term>> edge = edge(share, pressurePa, work);
    if (edge instanceof Outcome.Result<List<Term>> forces) {
      Term reaction = forces.value().get(share.edge().attachments().indexOf(attachment));
      work.write(force, reaction.symbol(), Source.STATICS, reaction);
    } else {
      work.write(
          force,
          "p*A_s",
          Source.STATICS,
          Term.pressure("p_" + number, "net pressure on " + share.module().name(), pressurePa),
          Term.area("A_s", "area of module that it carries", share.areaM2()));
    }
    return force;
  }

  private Outcome<List<Term>> edge(Share share, double pressurePa, Work work) {
    if (shares.areEven()) {
      return new Outcome.NotApplicable<>("the clamps of an edge share its load evenly");
    }
    double leftM = share.module().leftM();
    double[] clampsM =
        share.edge().attachments().stream().mapToDouble(c -> c.alongM() - leftM).toArray();
    return new ModuleOnClamps(share.module().alongM(), share.module().upM(), clampsM)
        .show(pressurePa, 1, work);
  }

  private double netPa(Share share) {
    ModuleLoad load = loads.of(share.module());
    return (up() ? load.upPa() : load.downPa())[used.force().combination()];
  }

  private static void sum(String symbol, String meaning, List<Term> parts, Work work) {
    double sumN = parts.stream().mapToDouble(Term::si).sum();
    String formula = String.join("+", parts.stream().map(Term::symbol).toList());
    Term sum = Term.force(symbol, meaning, sumN);
    work.write(sum, formula, Source.STATICS, parts.toArray(Term[]::new));
  }

  private void strength(Work work) {
    Strengths.of(
        attachment.part().orElseThrow(),
        strengths.row(),
        loads.standard().method(),
        conversion,
        work);
  }

  private void share(Work work) {
    Demand<S> demand = new Demand<>(used.force().normalN(), used.force().alongN());
    Utilisation.show(demand, strengths.resistance(), strengths.interaction(), work);
  }

  /** Chains about one attachment are equal: their facts hold the numbers. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof AttachmentChain<?> chain
        && chain.attachment.name().equals(attachment.name());
  }

  @Override
  public int hashCode() {
    return attachment.name().hashCode();
  }

  @Override
  public String toString() {
    return "how " + attachment.name() + " is used";
  }
}
