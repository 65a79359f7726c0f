package clampwise.units;

/** The physical kind of a quantity. Two units convert into each other only within one dimension. */
public enum Dimension {
  LENGTH,
  ANGLE,
  AREA,
  MASS,
  FORCE,
  PRESSURE,
  LINE_LOAD,
  UNIT_WEIGHT,
  SPEED,
  TEMPERATURE,
  TORQUE,
  VOLTAGE,
  CURRENT,
  RESISTANCE,
  TEMPERATURE_RATE,
  DURATION,
  COATING,
  WIRE_SIZE,
  NUMBER
}
