package clampwise.calc.wind;

/** Exposure category of the ground around a building. */
public enum Exposure {
  B,
  C,
  D
}
