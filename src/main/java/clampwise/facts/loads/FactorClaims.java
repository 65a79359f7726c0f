package clampwise.facts.loads;

import clampwise.facts.layout.PlacedModule;
import clampwise.finding.Subject;
import clampwise.job.Quantity;
import clampwise.job.Quantity.Factor;
import clampwise.units.QuantityPrint;
import clampwise.units.Unit;
import clampwise.units.Units;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Holds the factors that the drawings state against those of a field. */
final class FactorClaims {

  private static final Subject EDGE = Subject.of("claims", "edge factor");
  private static final Subject EQUALISATION = Subject.of("claims", "equalisation factor");
  private static final Subject SLOPE = Subject.of("claims", "slope factor");
  private static final double STEP = 0.01;
  private static final int NAMED_MODULES = 3;

  private final ClaimedLoads asked;

  private FactorClaims(ClaimedLoads asked) {
    this.asked = asked;
  }

  static void ask(ClaimedLoads asked) {
    FactorClaims claims = new FactorClaims(asked);
    asked.claims().edgeFactor().ifPresent(claims::edge);
    asked.claims().equalisationFactor().ifPresent(claims::equalisation);
    asked.claims().slopeFactor().ifPresent(claims::slope);
  }

  private void edge(Factor stated) {
    Optional<PanelMethod> method = method();
    Optional<String> unknown = unknown(method).or(() -> method.flatMap(PanelMethod::failed));
    if (unknown.isPresent()) {
      asked.missing(EdgeFactorClaim.class, EDGE, unknown.get(), stated.at());
      return;
    }
    List<PlacedModule> modules = asked.site().field().modules();
    double most = modules.stream().mapToDouble(this::edgeFactor).max().orElse(1);
    List<PlacedModule> exposed =
        modules.stream().filter(module -> edgeFactor(module) == most).toList();
    asked
        .answers()
        .add(
            new EdgeFactorClaim(
                asked.subject(EDGE),
                EDGE,
                stated.at(),
                Unit.NUMBER,
                asked.field(),
                stated.value(),
                most,
                exposed.size(),
                names(exposed),
                exposed.stream().findFirst().map(method.orElseThrow()::exposure).orElse("")));
  }

  private double edgeFactor(PlacedModule module) {
    return asked.loads().of(module).place().edgeFactor();
  }

  private static String names(List<PlacedModule> modules) {
    String first =
        modules.stream()
            .limit(NAMED_MODULES)
            .map(PlacedModule::name)
            .collect(Collectors.joining(", "));
    int more = modules.size() - NAMED_MODULES;
    return more > 0 ? first + " and " + more + " more" : first;
  }

  private void equalisation(Factor stated) {
    Optional<PanelMethod> method = method();
    Optional<String> unknown = unknown(method);
    if (unknown.isPresent()) {
      asked.missing(EqualisationClaim.class, EQUALISATION, unknown.get(), stated.at());
      return;
    }
    PlacedModule module =
        asked.site().field().modules().stream()
            .min(Comparator.comparingDouble(FactorClaims::areaM2))
            .orElseThrow();
    double computed = method.orElseThrow().equalisation(areaM2(module));
    asked
        .answers()
        .add(
            new EqualisationClaim(
                asked.subject(EQUALISATION),
                EQUALISATION,
                stated.at(),
                Unit.NUMBER,
                asked.field(),
                stated.value(),
                asked.claims().equalisationArea().map(FactorClaims::readAt).orElse(""),
                computed,
                asked.least(computed, STEP),
                from(method.orElseThrow(), module)));
  }

  private static String readAt(Quantity.Area area) {
    return ", read at " + QuantityPrint.text(area.si(), area.unit());
  }

  private String from(PanelMethod method, PlacedModule module) {
    Unit unit =
        asked.site().pressureUnit().equals(Units.PSF) ? Units.SQUARE_FOOT : Units.SQUARE_METRE;
    return method
        .failed()
        .map(why -> "no credit: " + why)
        .orElseGet(() -> "one module of " + QuantityPrint.text(areaM2(module), unit));
  }

  private static double areaM2(PlacedModule module) {
    return module.alongM() * module.upM();
  }

  private void slope(Factor stated) {
    Optional<String> unknown = asked.loads().snowUnknown();
    Optional<SlopeSnow> factors =
        asked.loads().standard().snow().result().flatMap(FieldSnow::slopeSnow);
    if (factors.isEmpty()) {
      String reason = unknown.orElse("the snow standard of the site has no slope factor");
      asked.missing(SlopeFactorClaim.class, SLOPE, reason, stated.at());
      return;
    }
    asked.answers().add(fact(stated, factors.get()));
  }

  private SlopeFactorClaim fact(Factor stated, SlopeSnow factors) {
    boolean bare = Math.abs(stated.value() - factors.bare()) < STEP;
    return new SlopeFactorClaim(
        asked.subject(SLOPE),
        SLOPE,
        stated.at(),
        Unit.NUMBER,
        asked.field(),
        stated.value(),
        bare ? "that of bare metal off which snow slides" : "less than the array leaves",
        factors.factor(),
        asked.least(factors.factor(), STEP));
  }

  private Optional<PanelMethod> method() {
    return asked.loads().standard().wind().result().flatMap(FieldWind::parallel);
  }

  private Optional<String> unknown(Optional<PanelMethod> method) {
    return asked
        .loads()
        .windUnknown()
        .or(
            () ->
                method.isEmpty()
                    ? Optional.of("the wind standard of the site has no such factor")
                    : Optional.empty());
  }
}
