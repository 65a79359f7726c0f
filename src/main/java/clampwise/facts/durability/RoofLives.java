package clampwise.facts.durability;

import clampwise.catalogue.Limit;
import clampwise.catalogue.SheetCoating;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Panel;
import clampwise.job.Quantity.Years;
import clampwise.job.Roof;
import clampwise.units.Units;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Asks whether the covering lasts as long as the array on it. */
record RoofLives(Weathering weathering, Roof roof) {

  /** Life of an array, and the practice it comes from where the job says nothing. */
  record ArrayLife(double s, Optional<Limit> limit) {}

  /** Life of a covering, and how it is known. */
  private record Life(double s, String from) {}

  /** As written, else as usual. */
  static ArrayLife arrayLife(Weathering weathering) {
    Limit usual = weathering.limit("array-life");
    return weathering
        .job()
        .roof()
        .map(roof -> arrayLife(weathering, roof))
        .orElseGet(() -> new ArrayLife(usual.si(), Optional.of(usual)));
  }

  static ArrayLife arrayLife(Weathering weathering, Roof roof) {
    Limit usual = weathering.limit("array-life");
    return roof.arrayLife()
        .map(written -> new ArrayLife(written.s(), Optional.empty()))
        .orElseGet(() -> new ArrayLife(usual.si(), Optional.of(usual)));
  }

  static String noAge(Weathering weathering) {
    return weathering.lacks("the age of the covering", "roof", "age");
  }

  void ask() {
    Subject subject = Weathering.ROOF.part("life");
    Optional<Life> life = life();
    if (roof.age().isEmpty()) {
      weathering.missing(RoofLife.class, subject, noAge(weathering));
    } else if (life.isEmpty()) {
      String what = "the expected life of the covering";
      weathering.missing(RoofLife.class, subject, weathering.lacks(what, "roof", "expected-life"));
    } else {
      weathering.add(fact(subject, roof.age().get(), life.get()));
    }
  }

  private RoofLife fact(Subject subject, Years age, Life life) {
    ArrayLife array = arrayLife(weathering, roof);
    return new RoofLife(
        subject,
        age.at(),
        Units.YEAR,
        Map.of("expectedS", Units.YEAR),
        age.s(),
        life.s(),
        life.from(),
        Math.rint(life.s() - age.s()),
        Math.rint(array.s()),
        array.limit());
  }

  /** As written, else the low end of what standing seams of Al-Zn coated steel reach. */
  private Optional<Life> life() {
    Limit usual = weathering.limit("al-zn-roof-life");
    return roof.expectedLife()
        .map(written -> new Life(written.s(), "as written"))
        .or(
            () ->
                isAlZnSeams()
                    ? Optional.of(new Life(usual.si(), "as usual for Al-Zn coated seams"))
                    : Optional.empty());
  }

  private boolean isAlZnSeams() {
    List<PlaneLayout> planes = new Sheets(weathering).underModules();
    return !planes.isEmpty()
        && planes.stream().allMatch(plane -> plane.panel().filter(RoofLives::isAlZn).isPresent());
  }

  private static boolean isAlZn(Panel panel) {
    boolean seams = panel.kind().value() == Panel.Kind.STANDING_SEAM;
    return seams
        && panel
            .coating()
            .flatMap(text -> SheetCoating.of(text.value()))
            .filter(coating -> !coating.isZinc())
            .isPresent();
  }
}
