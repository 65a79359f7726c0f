package clampwise.proof;

import java.util.Random;
import java.util.SplittableRandom;

/**
 * Random numbers from a seed and a number; those of neighbouring numbers have nothing in common.
 */
final class Seeds {
  private static final long PRIME = 1_000_003;

  private Seeds() {}

  static Random random(long seed, long number) {
    return new Random(new SplittableRandom(seed * PRIME + number).nextLong());
  }
}
