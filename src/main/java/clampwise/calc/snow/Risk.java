package clampwise.calc.snow;

/** Risk category of a building, ASCE 7 table 1.5-1. */
public enum Risk {
  I,
  II,
  III,
  IV
}
