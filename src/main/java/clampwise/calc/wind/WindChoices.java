package clampwise.calc.wind;

import clampwise.calc.AsceEdition;
import java.util.Optional;

/**
 * What the standard leaves open, or what its transcriptions disagree on. Each is a stated
 * assumption; what is undecided takes the severe side until someone chooses.
 *
 * @param method how the exposure coefficient is found
 * @param exposureFloor floor of 0.70 for exposure B below 30 ft, which the main system has
 * @param hipCurve end of the lines of zones 2 and 3 in figure 30.3-2F of 7-22
 * @param exposedEdge what makes a panel exposed; empty for the edition's own reading
 * @param equalisation end of the line of the equalisation factor
 * @param wallReduced walls reduced by 10 percent where a parapet lends their coefficient to a roof
 */
public record WindChoices(
    ExposureMethod method,
    boolean exposureFloor,
    HipCurve hipCurve,
    Optional<ExposedReading> exposedEdge,
    Equalisation equalisation,
    boolean wallReduced) {

  /** How the exposure coefficient is found; the standard allows table and formula. */
  public enum ExposureMethod {
    TABLE,
    FORMULA,
    /** The larger of both. */
    SEVERE
  }

  /** Area at which figure 30.3-2F of 7-22 ends: the transcriptions differ. */
  public enum HipCurve {
    TO_200_SQ_FT,
    TO_100_SQ_FT
  }

  /** What makes a panel exposed, and how wide the strip of raised uplift is. */
  public enum ExposedReading {
    /** Nothing within 4 h2 and 4 ft; strip of 1.5 panel lengths. */
    FOUR_HEIGHTS,
    /** Nothing within 2 h2; strip of 2 h2. */
    TWO_HEIGHTS,
    /** Exposed by either, and the wider strip. */
    SEVERE
  }

  /** End of the line of the equalisation factor. */
  public enum Equalisation {
    TO_0_40,
    TO_0_45
  }

  /** What stands when nothing is chosen. */
  public static WindChoices usual() {
    return new WindChoices(
        ExposureMethod.SEVERE,
        false,
        HipCurve.TO_200_SQ_FT,
        Optional.empty(),
        Equalisation.TO_0_40,
        false);
  }

  /** The same with another way to the exposure coefficient. */
  public WindChoices with(ExposureMethod other) {
    return new WindChoices(other, exposureFloor, hipCurve, exposedEdge, equalisation, wallReduced);
  }

  /** The same with or without the floor in exposure B. */
  public WindChoices withExposureFloor(boolean other) {
    return new WindChoices(method, other, hipCurve, exposedEdge, equalisation, wallReduced);
  }

  /** The same with another end of figure 30.3-2F. */
  public WindChoices with(HipCurve other) {
    return new WindChoices(method, exposureFloor, other, exposedEdge, equalisation, wallReduced);
  }

  /** The same with another reading of "exposed". */
  public WindChoices with(ExposedReading other) {
    return new WindChoices(
        method, exposureFloor, hipCurve, Optional.of(other), equalisation, wallReduced);
  }

  /** The same with another end of the equalisation line. */
  public WindChoices with(Equalisation other) {
    return new WindChoices(method, exposureFloor, hipCurve, exposedEdge, other, wallReduced);
  }

  /** The same with or without the reduction of walls. */
  public WindChoices withWallReduced(boolean other) {
    return new WindChoices(method, exposureFloor, hipCurve, exposedEdge, equalisation, other);
  }

  /** The reading of "exposed" that holds for an edition. */
  ExposedReading exposedEdge(AsceEdition edition) {
    boolean decided = edition == AsceEdition.ASCE_7_16;
    return exposedEdge.orElse(decided ? ExposedReading.FOUR_HEIGHTS : ExposedReading.SEVERE);
  }
}
