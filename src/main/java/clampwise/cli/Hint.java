package clampwise.cli;

import java.util.Optional;

/** How a message names the word that was probably meant. */
final class Hint {

  private Hint() {}

  static String of(Optional<String> nearest) {
    return nearest.map(word -> "; the nearest is " + word).orElse("");
  }
}
