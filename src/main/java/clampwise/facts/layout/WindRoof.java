package clampwise.facts.layout;

import clampwise.calc.AsceEdition;
import clampwise.calc.EditionTables;
import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.RoofGeometry;
import clampwise.calc.ZoneWidth;
import clampwise.calc.ZoneWidth.Roof;
import clampwise.calc.ZoneWidth.Shape;
import clampwise.calc.ZoneWidth.Widths;
import clampwise.catalogue.CodeTables;
import clampwise.job.Building;
import clampwise.job.Building.RoofShape;
import clampwise.job.Choice;
import clampwise.job.Job;
import clampwise.job.Plane;
import clampwise.job.Quantity.Length;
import clampwise.job.Quantity.Slope;
import clampwise.job.Site;
import clampwise.job.Site.LoadCode;
import java.util.Optional;
import java.util.function.Function;

/** Gathers from the job what the wind standard asks about a roof, or says what is missing. */
public final class WindRoof {

  private final Job job;
  private final Plane plane;
  private final CodeTables codes;

  /** The roof of a plane under the standards that ship with the program. */
  public WindRoof(Job job, Plane plane, CodeTables codes) {
    this.job = job;
    this.plane = plane;
    this.codes = codes;
  }

  /** Edition of the wind standard, if it is given. */
  public Optional<LoadCode> code() {
    return job.site().flatMap(Site::codes).flatMap(Site.Codes::loads).map(Choice::value);
  }

  /** Shape of the roof, if it is given. */
  public Optional<RoofShape> shape() {
    return job.building().flatMap(Building::roof).map(Choice::value);
  }

  /** Slope of the plane [rad]; a flat roof is level unless a slope is written. */
  public Optional<Double> slopeRad() {
    Optional<Double> level = shape().filter(RoofShape.FLAT::equals).map(flat -> 0.0);
    return plane.slope().map(Slope::rad).or(() -> level);
  }

  /** Height h of the wind provisions [m], from what is written of eave and mean height. */
  public Optional<Double> heightM() {
    Optional<Double> eaveM = length(Building::eaveHeight);
    Optional<Double> meanM = length(Building::meanRoofHeight);
    if (slopeRad().filter(rad -> RoofGeometry.isEaveHeight(eaveUpToRad(), rad)).isPresent()) {
      return eaveM.or(() -> meanM);
    }
    return meanM.or(() -> eaveM.flatMap(this::windHeightM));
  }

  /** Widths of the wind zones in plan, or why they are not known. */
  public Outcome<Widths> widths() {
    return missing()
        .<Outcome<Widths>>map(NotApplicable::new)
        .orElseGet(() -> checked(ZoneWidth.of(tables(), roof())));
  }

  /** The roof as the wind standard asks for it, or what is missing. */
  public Outcome<Roof> described() {
    return missing().<Outcome<Roof>>map(NotApplicable::new).orElseGet(() -> new Result<>(roof()));
  }

  private Optional<String> missing() {
    if (code().isEmpty()) {
      return Optional.of(missing("the edition of the load standard", "site", "codes", "loads"));
    }
    if (code().filter(LoadCode.EN_1991::equals).isPresent()) {
      return Optional.of("the roof is under EN 1991, not under ASCE 7");
    }
    if (shape().isEmpty()) {
      return Optional.of(missing("the roof shape of the building", "building", "roof"));
    }
    if (slopeRad().isEmpty()) {
      return Optional.of(missing("the slope of the plane", "planes", planeName(), "slope"));
    }
    return heightM().isEmpty()
        ? Optional.of(
            ofBuilding("the mean roof height of the building", "eave-height", "mean-roof-height"))
        : Optional.empty();
  }

  /** Low slopes need no plan size; where one is needed, an unknown size makes unknown widths. */
  private Outcome<Widths> checked(Outcome<Widths> widths) {
    return widths instanceof Result<Widths> result && Double.isNaN(result.value().edgeM())
        ? new NotApplicable<>(ofBuilding("the plan size of the building", "length", "width"))
        : widths;
  }

  private String missing(String what, String... path) {
    return job.unreadable().missing(what, path);
  }

  /** Says why something that two keys of the building give is not known. */
  private String ofBuilding(String what, String key, String otherKey) {
    boolean other = job.unreadable().touches("building", otherKey);
    return missing(what, "building", other ? otherKey : key);
  }

  private String planeName() {
    return job.planes().all().stream()
        .filter(item -> item.value().equals(plane))
        .map(item -> item.name().value())
        .findFirst()
        .orElse("");
  }

  private Roof roof() {
    return new Roof(
        Shape.valueOf(shape().orElseThrow().name()),
        slopeRad().orElseThrow(),
        leastPlanM(),
        heightM().orElseThrow());
  }

  private double leastPlanM() {
    return Math.min(
        length(Building::length).orElse(Double.NaN), length(Building::width).orElse(Double.NaN));
  }

  /** The share of the building that a plane has to span to be its roof under EN 1991-1-4. */
  double leastShareOfBuilding() {
    return codes.file("en-wind.yaml").get("plane-of-building").rows().get(0).number("least-share");
  }

  private double eaveUpToRad() {
    return tables().row("roof-height").number("eave-up-to");
  }

  /** Tables of the edition in force; of the latest where none is given, for what they agree in. */
  private EditionTables tables() {
    return codes.windTables(
        code()
            .filter(code -> code != LoadCode.EN_1991)
            .map(code -> AsceEdition.valueOf(code.name()))
            .orElse(AsceEdition.ASCE_7_22));
  }

  private Optional<Double> windHeightM(double eaveM) {
    boolean oneSided = shape().filter(RoofShape.MONOSLOPE::equals).isPresent();
    return length(Building::width)
        .map(widthM -> oneSided ? widthM : widthM / 2)
        .flatMap(
            runM ->
                slopeRad()
                    .map(
                        slopeRad ->
                            RoofGeometry.windHeightM(eaveUpToRad(), eaveM, runM, slopeRad)));
  }

  Optional<Double> length(Function<Building, Optional<Length>> of) {
    return job.building().flatMap(of).map(Length::m);
  }
}
