package clampwise.facts.loads;

import clampwise.calc.AsceEdition;
import clampwise.calc.wind.WindChoices;
import clampwise.calc.wind.WindChoices.Equalisation;
import clampwise.calc.wind.WindChoices.ExposedReading;
import clampwise.calc.wind.WindChoices.ExposureMethod;
import clampwise.calc.wind.WindChoices.HipCurve;
import clampwise.job.Flag;
import clampwise.job.Loads;
import clampwise.job.Quantity.Factor;
import java.util.Optional;
import java.util.function.BiFunction;

/** What a job chooses where the wind standard is open; the rest stays as it is. */
record WindReadings(FieldSite asked, AsceEdition edition) {

  private static final String TO_0_45 = "panel-equalisation-end-0.45";

  private static final double NOISE = 1e-9;

  WindChoices over(WindChoices usual) {
    WindChoices choices = usual;
    choices = with(choices, method(), WindChoices::with);
    choices = with(choices, reading(), WindChoices::with);
    choices = with(choices, hipCurve(), WindChoices::with);
    choices = with(choices, end(), WindChoices::with);
    choices = with(choices, flag(Loads.WindReading::exposureFloor), WindChoices::withExposureFloor);
    return with(choices, flag(Loads.WindReading::wallReduction), WindChoices::withWallReduced);
  }

  private static <T> WindChoices with(
      WindChoices choices, Optional<T> chosen, BiFunction<WindChoices, T, WindChoices> apply) {
    return chosen.map(value -> apply.apply(choices, value)).orElse(choices);
  }

  private Optional<ExposureMethod> method() {
    return asked
        .wind(Loads.WindReading::exposureCoefficient)
        .map(chosen -> ExposureMethod.valueOf(chosen.value().name()));
  }

  private Optional<ExposedReading> reading() {
    return asked
        .wind(Loads.WindReading::exposedEdge)
        .map(chosen -> ExposedReading.valueOf(chosen.value().name()));
  }

  private Optional<HipCurve> hipCurve() {
    return asked
        .wind(Loads.WindReading::hipCurve)
        .map(chosen -> HipCurve.valueOf(chosen.value().name()));
  }

  private Optional<Equalisation> end() {
    return asked
        .wind(Loads.WindReading::equalisationEnd)
        .map(end -> is(end, TO_0_45) ? Equalisation.TO_0_45 : Equalisation.TO_0_40);
  }

  private boolean is(Factor end, String reading) {
    return Math.abs(end.value() - lastOf(reading)) < NOISE;
  }

  private double lastOf(String reading) {
    return asked.layout().catalogue().codes().windTables(edition).row(reading).number("last");
  }

  private Optional<Boolean> flag(
      java.util.function.Function<Loads.WindReading, Optional<Flag>> of) {
    return asked.wind(of).map(Flag::value);
  }
}
