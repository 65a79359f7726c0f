package clampwise.units;

import java.util.Optional;

/**
 * Rounds and prints everyday numbers without decimal arithmetic, which takes ten times as long.
 * Numbers near the middle between two roundings, and very large ones, are left to it.
 */
final class QuickDecimals {

  private static final int MOST_DECIMALS = 9;
  private static final double MOST = 1e9;

  /** Far above what a product of two doubles below {@link #MOST} may be wrong by. */
  private static final double NEAR_MIDDLE = 1e-6;

  private QuickDecimals() {}

  /** A number with at most so many decimals, without trailing zeros; empty if not so easily. */
  static Optional<String> trimmed(double x, int decimals) {
    long scale = power(decimals);
    double scaled = Math.abs(x) * scale;
    double whole = Math.floor(scaled);
    double part = scaled - whole;
    boolean easy = decimals <= MOST_DECIMALS && scaled < MOST && Math.abs(part - 0.5) > NEAR_MIDDLE;
    long rounded = (long) whole + (part > 0.5 ? 1 : 0);
    return easy ? Optional.of(text(x < 0 && rounded != 0, rounded, scale)) : Optional.empty();
  }

  private static String text(boolean negative, long rounded, long scale) {
    StringBuilder text = new StringBuilder(negative ? "-" : "").append(rounded / scale);
    long rest = rounded % scale;
    if (rest != 0) {
      text.append('.');
    }
    for (long place = scale / 10; rest != 0; place /= 10) {
      text.append((char) ('0' + rest / place));
      rest %= place;
    }
    return text.toString();
  }

  private static long power(int decimals) {
    long power = 1;
    for (int i = 0; i < Math.min(decimals, MOST_DECIMALS); i++) {
      power *= 10;
    }
    return power;
  }
}
