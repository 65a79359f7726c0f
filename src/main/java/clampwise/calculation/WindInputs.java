package clampwise.calculation;

import clampwise.calc.AsceEdition;
import clampwise.calc.ZoneWidth.Roof;
import clampwise.calc.ZoneWidth.Shape;
import clampwise.calc.wind.Enclosure;
import clampwise.calc.wind.Exposure;
import clampwise.calc.wind.Patch;
import clampwise.calc.wind.WindBuilding;
import clampwise.calc.wind.WindChoices;
import clampwise.calc.wind.WindChoices.Equalisation;
import clampwise.calc.wind.WindChoices.ExposedReading;
import clampwise.calc.wind.WindChoices.ExposureMethod;
import clampwise.calc.wind.WindChoices.HipCurve;
import clampwise.calc.wind.WindCode;
import clampwise.calc.wind.WindSite;
import clampwise.catalogue.LimitsReader;
import clampwise.catalogue.WindCodes;
import clampwise.units.Dimension;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** Inputs of the wind calculations and what is made of them. */
final class WindInputs {

  static final Input EDITION =
      Input.word("edition", "edition of the standard", "asce-7-16", "asce-7-22");
  static final Input EXPOSURE = Input.word("exposure", "exposure category", "B", "C", "D");
  static final Input HEIGHT =
      Input.of("height", "height h of the roof above ground", Dimension.LENGTH, 0.0, 1000.0);
  static final Input AREA = Input.of("area", "effective wind area", Dimension.AREA, 1e-3, 1e5);
  static final Input EQUALISATION =
      Input.word("equalisation", "end of the equalisation line", "to-0.40", "to-0.45")
          .unless("to-0.40");
  static final Input READING =
      Input.word(
              "exposed-reading",
              "what makes a panel exposed",
              "edition",
              "four-heights",
              "two-heights",
              "severe")
          .unless("edition");
  static final Input ENCLOSURE =
      Input.word(
              "enclosure",
              "enclosure of the building",
              "enclosed",
              "partially-open",
              "partially-enclosed",
              "open")
          .unless("enclosed");

  /** How the exposure coefficient is found. */
  static final List<Input> METHOD =
      List.of(
          Input.word(
                  "exposure-method",
                  "how the exposure coefficient is found",
                  "table",
                  "formula",
                  "severe")
              .unless("severe"),
          Words.yesNo("exposure-floor", "floor of 0.70 in exposure B").unless("no"));

  /** Ground elevation, in either form. */
  static final List<Input> GROUND =
      List.of(
          Input.of("ground-factor", "ground elevation factor", Dimension.NUMBER, 0.3, 1.1)
              .orNothing(),
          Input.of("ground-elevation", "ground above sea level", Dimension.LENGTH, -500.0, 9000.0)
              .orNothing());

  /** Everything the velocity pressure needs. */
  static final List<Input> SITE =
      join(
          List.of(
              EDITION,
              Input.of("wind-speed", "basic wind speed", Dimension.SPEED, 0.1, 200.0),
              EXPOSURE,
              HEIGHT,
              Input.of("topographic-factor", "topographic factor", Dimension.NUMBER, 1.0, 5.0)
                  .unless("1")),
          GROUND,
          METHOD);

  /** The building without its height. */
  static final List<Input> BUILDING =
      List.of(
          Input.word("roof", "shape of the roof", "gable", "hip", "monoslope", "flat"),
          Input.of("slope", "slope of the roof", Dimension.ANGLE, 0.0, 1.3),
          Input.of("least-width", "least plan size", Dimension.LENGTH, 0.5, 1000.0).orNothing());

  /** A place on the roof. */
  static final List<Input> PLACE =
      List.of(
          Input.word(
              "zone",
              "zone of the figure",
              "1",
              "1'",
              "2",
              "2'",
              "2e",
              "2n",
              "2r",
              "3",
              "3'",
              "3e",
              "3r"),
          AREA,
          Input.of("parapet", "height of the parapet", Dimension.LENGTH, 0.0, 10.0).unless("0 ft"),
          Input.word("hip-curve", "end of figure 30.3-2F", "to-200-sq-ft", "to-100-sq-ft")
              .unless("to-200-sq-ft"),
          Words.yesNo("wall-reduction", "walls behind a parapet less 10 percent").unless("no"));

  private WindInputs() {}

  @SafeVarargs
  @SuppressWarnings("varargs") // the array is only read
  static List<Input> join(List<Input>... parts) {
    return Stream.of(parts).flatMap(List::stream).distinct().toList();
  }

  static WindCode code(Given given) {
    AsceEdition edition = Words.choice(AsceEdition.class, given.word("edition"));
    return Objects.requireNonNull(Shipped.CODES.get(edition)).with(choices(given));
  }

  /** Read when the first wind calculation runs. */
  private static final class Shipped {

    static final Map<AsceEdition, WindCode> CODES = WindCodes.readAll(LimitsReader.read());
  }

  private static WindChoices choices(Given given) {
    WindChoices choices =
        WindChoices.usual()
            .with(choice(given, "exposure-method", ExposureMethod.SEVERE))
            .with(choice(given, "hip-curve", HipCurve.TO_200_SQ_FT))
            .with(equalisation(given))
            .withExposureFloor(isYes(given, "exposure-floor"))
            .withWallReduced(isYes(given, "wall-reduction"));
    return word(given, "exposed-reading")
        .filter(word -> !word.equals("edition"))
        .map(word -> choices.with(Words.choice(ExposedReading.class, word)))
        .orElse(choices);
  }

  private static <E extends Enum<E>> E choice(Given given, String input, E usual) {
    return word(given, input)
        .map(word -> Words.choice(usual.getDeclaringClass(), word))
        .orElse(usual);
  }

  private static Equalisation equalisation(Given given) {
    return word(given, "equalisation").filter("to-0.45"::equals).isPresent()
        ? Equalisation.TO_0_45
        : Equalisation.TO_0_40;
  }

  private static boolean isYes(Given given, String input) {
    return word(given, input).filter("yes"::equals).isPresent();
  }

  private static Optional<String> word(Given given, String input) {
    return Optional.ofNullable(given.words().get(input));
  }

  static WindSite site(Given given) {
    return new WindSite(
        given.number("wind-speed"),
        exposure(given),
        given.number("topographic-factor"),
        given.find("ground-factor"),
        given.find("ground-elevation"));
  }

  static Exposure exposure(Given given) {
    return Exposure.valueOf(given.word("exposure"));
  }

  static Roof roof(Given given) {
    return new Roof(
        Words.choice(Shape.class, given.word("roof")),
        given.number("slope"),
        given.find("least-width").orElse(Double.NaN),
        given.number("height"));
  }

  static WindBuilding building(Given given) {
    return new WindBuilding(roof(given), enclosure(given), given.find("parapet").orElse(0.0));
  }

  static Enclosure enclosure(Given given) {
    return choice(given, "enclosure", Enclosure.ENCLOSED);
  }

  static Patch patch(Given given) {
    return new Patch(given.word("zone"), given.number("area"));
  }
}
