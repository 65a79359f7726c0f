package clampwise.job;

/** What a roof sheet rests on, as far as it decides which attachment test applies. */
public enum Substrate {
  SOLID_DECK,
  OPEN_PURLINS,
  INSULATION_OVER_DECK
}
