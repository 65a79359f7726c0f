package clampwise.facts.loads;

import clampwise.calc.combination.Combination;
import clampwise.calc.trail.Chain;
import clampwise.calc.trail.Section;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.loads.ModuleWork.Case;
import clampwise.job.ModuleType.LoadBasis;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How the use of a module's rating was got.
 *
 * @param ratedPa rating of its table, as written [Pa]
 * @param testOverDesign test load over design load [-]
 */
record ModuleChain(
    FieldLoads loads,
    PlacedModule module,
    Combination combination,
    boolean up,
    double ratedPa,
    double testOverDesign)
    implements Chain {

  private static final Source MANUAL =
      Source.of("module-manual", "clamp-zone table", "as entered in the job or the catalogue");

  @Override
  public List<Section> sections() {
    ChainWriter chain = new ChainWriter(loads.site().measure());
    ModuleWork work = new ModuleWork(loads);
    work.factors(combination, false, chain);
    work.write(new Case(module, combination, up), chain);
    chain.deciding("Rating of " + module.typeName() + " for these clamps", this::rating);
    return chain.sections();
  }

  private void rating(Work work) {
    boolean test =
        module.type().loadsAre().filter(are -> are.value() == LoadBasis.TEST).isPresent();
    double designPa = test ? ratedPa / testOverDesign : ratedPa;
    Term rating = Term.pressure("R", "design rating", designPa);
    if (test) {
      work.write(
          rating,
          "T/k",
          Source.of("iec-61215-2", "static mechanical load test", "read"),
          Term.pressure("T", "test load of the table", ratedPa),
          Term.number("k", "test load over design load", testOverDesign));
    } else {
      work.given(rating, MANUAL);
    }
    double netPa = netPa();
    Term net = Term.pressure(up ? "q_up" : "q_down", "net pressure across the surface", netPa);
    work.write(
        Term.number("U", "share of the rating used", (up ? -netPa : netPa) / designPa),
        up ? "(0-q_up)/R" : "q_down/R",
        Source.STATICS,
        net,
        rating);
  }

  private double netPa() {
    var effect = combination.of(loads.of(module).actions());
    return up ? effect.normalUp() : effect.normalDown();
  }

  /** Chains about one module are equal: their facts hold the numbers. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ModuleChain chain && chain.module.name().equals(module.name());
  }

  @Override
  public int hashCode() {
    return module.name().hashCode();
  }

  @Override
  public String toString() {
    return "how " + module.name() + " is used";
  }
}
