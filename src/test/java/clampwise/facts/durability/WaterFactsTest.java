package clampwise.facts.durability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.facts.BaseJob;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;

/** Clear of water: valleys, gutters, curbs, skylights, flues; and the gap below. */
class WaterFactsTest {

  private static final GeometryFactory SHAPES = new GeometryFactory();
  private static final double INCH_M = 0.0254;

  private static BaseJob job(String over) {
    return BaseJob.with("weathered-roof", over);
  }

  private static PlaneLayout plane() {
    return job("revision: B").layout().planes().get(0);
  }

  @Test
  void distancesFromLinesAreThoseOfTheGeometryLibrary() {
    Random random = new Random(3);
    List<PlacedModule> modules = plane().fields().get(0).modules();
    for (int n = 0; n < 2000; n++) {
      PlacedModule module = modules.get(random.nextInt(modules.size()));
      LineSegment line =
          new LineSegment(
              30 * random.nextDouble(), 9 * random.nextDouble(),
              30 * random.nextDouble(), 9 * random.nextDouble());
      Envelope box = new ModuleReach(module).box();
      double library = SHAPES.toGeometry(box).distance(line.toGeometry(SHAPES));
      double own = new ModuleReach(module).toM(line);
      if (library > 0) {
        assertThat(own).isCloseTo(library, within(1e-9));
      }
    }
  }

  @Test
  void waterRunsOverTheModulesOfItsStrip() {
    Random random = new Random(8);
    PlaneLayout plane = plane();
    for (int n = 0; n < 500; n++) {
      double leftM = 4 + 10 * random.nextDouble();
      double bottomM = 9 * random.nextDouble();
      Envelope thing = new Envelope(leftM, leftM + random.nextDouble(), bottomM, bottomM + 0.3);
      Envelope strip = new Envelope(thing.getMinX(), thing.getMaxX(), -100, bottomM);
      List<String> expected = new ArrayList<>();
      for (PlacedModule module : plane.fields().get(0).modules()) {
        if (strip.intersection(new ModuleReach(module).box()).getArea() > 0) {
          expected.add(module.name());
        }
      }
      assertThat(Runoffs.below(plane, thing))
          .extracting(PlacedModule::name)
          .containsExactlyInAnyOrderElementsOf(expected);
    }
  }

  /** Job map G12: 12 in [practice]; the skylight is 1 m high and the first row starts at 2.5 m. */
  @ParameterizedTest
  @CsvSource({"1.2, 0.3", "1.3, 0.2"})
  void modulesCloseAboveASkylightAreMeasuredUpTheSlope(double upM, double distanceM) {
    List<UphillDistance> facts = uphill("[7 m, %s m]".formatted(upM));

    assertThat(facts).allMatch(fact -> fact.distanceM() == distanceM);
    assertThat(facts).extracting(UphillDistance::module).containsExactly("A.R1C1", "A.R1C2");
  }

  @Test
  void whatIsBesideItOrInsideItsOwnClearanceIsNoAnswerHere() {
    assertThat(uphill("[4.9 m, 1.3 m]")).extracting(UphillDistance::module).containsOnly(none());
    assertThat(uphill("[7 m, 1.45 m]")).extracting(UphillDistance::module).containsOnly(none());
  }

  private static String none() {
    return "no module";
  }

  private static List<UphillDistance> uphill(String at) {
    String over = "planes: {south: {obstructions: {skylight: {at: %s}}}}".formatted(at);
    return job(over).facts(UphillDistance.class).stream()
        .filter(fact -> fact.obstruction().equals("skylight"))
        .toList();
  }

  @Test
  void theNearestModuleOfAFieldSpeaksForAllWhereNoneIsTooNear() {
    EaveDistance eave = job("revision: B").only(EaveDistance.class);

    assertThat(eave.distanceM()).isEqualTo(2.5);
    assertThat(eave.leastM()).isCloseTo(6 * INCH_M, within(1e-7));
  }

  @Test
  void eachModuleTooNearTheGutterIsAPlaceOfOneCause() {
    String over = "fields: {A: {block: {at: [6 m, 100 mm]}}}";
    List<EaveDistance> eaves = job(over).facts(EaveDistance.class);

    assertThat(eaves).hasSize(4).allMatch(fact -> fact.distanceM() == 0.1);
    assertThat(eaves).extracting(EaveDistance::cause).containsOnly(eaves.get(0).cause());
  }

  @Test
  void modulesPastTheEaveAreFoundElsewhere() {
    assertThat(job("fields: {A: {block: {at: [6 m, -100 mm]}}}").facts(EaveDistance.class))
        .extracting(EaveDistance::module)
        .containsExactly("A.R2C1");
  }

  /** Handbook example 3.11: X is 3.49 cm [read, recomputed]. */
  @Test
  void theGapForHeatIsThatOfHandbookExample311() {
    HeatGap gap = job("revision: B").only(HeatGap.class);

    assertThat(gap.leastM()).isEqualTo(0.0349);
    assertThat(gap.goodM()).as("2 in, for air").isCloseTo(0.0508, within(1e-9));
    assertThat(gap.gapM()).isEqualTo(0.12);
    assertThat(gap.reachedC()).isBetween(53.716, 70.0);
  }

  @Test
  void aGapTooSmallForTheHeatIsNotFoundAgainForItsAir() {
    BaseJob job = job("fields: {A: {top-height: 60 mm}}");

    assertThat(job.only(HeatGap.class)).matches(fact -> fact.gapM() < fact.leastM());
    assertThat(job.facts(AirGap.class)).isEmpty();
  }

  @Test
  void wherePartOfTheTemperaturesIsKnownTheRestIsNotChecked() {
    BaseJob job = job("site: {module-temperatures: {insulated: ~}}");

    assertThat(job.facts(OpenRackHeat.class)).hasSize(1);
    assertThat(job.missing(HeatGap.class))
        .containsExactly(
            "the module temperature with an insulated back is not given (site: module-temperatures: insulated)");
    assertThat(job("site: {module-temperatures: ~}").missing(OpenRackHeat.class))
        .containsExactly(
            "how hot modules get at the site is not given (site: module-temperatures)");
  }

  @Test
  void seamsOfAlZnHaveAUsualLifeAndOtherCoveringsNone() {
    assertThat(job("roof: {expected-life: ~}").only(RoofLife.class).from())
        .isEqualTo("as usual for Al-Zn coated seams");
    assertThat(
            job("roof: {expected-life: ~}\npanels: {steel seams: {coating: G90}}")
                .missing(RoofLife.class))
        .containsExactly("the expected life of the covering is not given (roof: expected-life)");
  }
}
