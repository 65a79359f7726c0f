package clampwise.calc.en;

/** Where the wind comes from, as one looks up the slope of a plane. */
public enum WindDirection {
  /** From the eave up the slope. */
  UP_THE_SLOPE,
  /** From the far side, down the slope. */
  DOWN_THE_SLOPE,
  FROM_THE_LEFT,
  FROM_THE_RIGHT;

  /** Whether the wind blows along the eave. */
  public boolean isAlongEave() {
    return this == FROM_THE_LEFT || this == FROM_THE_RIGHT;
  }

  WindDirection reversed() {
    return switch (this) {
      case UP_THE_SLOPE -> DOWN_THE_SLOPE;
      case DOWN_THE_SLOPE -> UP_THE_SLOPE;
      case FROM_THE_LEFT, FROM_THE_RIGHT -> this;
    };
  }
}
