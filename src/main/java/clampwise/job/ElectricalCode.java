package clampwise.job;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** An electrical code with its edition. */
public enum ElectricalCode {
  NEC_2017,
  NEC_2020,
  NEC_2023,
  IEC_62548,
  BS_7671,
  AS_NZS_5033;

  /** The code that free text such as {@code NEC 2020} means, if it is one of these. */
  static Optional<ElectricalCode> of(String text) {
    String word = joined(text.strip().toLowerCase(Locale.ROOT));
    return Stream.of(values()).filter(code -> Choice.word(code).equals(word)).findFirst();
  }

  /** Blanks, strokes and hyphens, one or several, as one hyphen. */
  private static String joined(String text) {
    StringBuilder word = new StringBuilder();
    for (char c : text.toCharArray()) {
      boolean between = " /-".indexOf(c) >= 0;
      if (!between) {
        word.append(c);
      } else if (word.isEmpty() || word.charAt(word.length() - 1) != '-') {
        word.append('-');
      }
    }
    return word.toString();
  }

  /** The code that a job names: with its strings, else for its site. */
  public static Optional<ElectricalCode> inForce(Job job) {
    Unreadable lost = job.unreadable();
    if (lost.touches("electrical", "code")) {
      return Optional.empty();
    }
    Optional<ElectricalCode> own = job.electrical().flatMap(Electrical::code).map(Choice::value);
    return own.or(() -> ofSite(job));
  }

  /** The code that a job names for its site, if it is one of these. */
  public static Optional<ElectricalCode> ofSite(Job job) {
    return job.site()
        .flatMap(Site::codes)
        .flatMap(Site.Codes::electrical)
        .flatMap(text -> of(text.value()));
  }

  /** Whether it is an edition of the National Electrical Code. */
  public boolean isNec() {
    return this == NEC_2017 || this == NEC_2020 || this == NEC_2023;
  }

  /** Key of its document in the references. */
  public String document() {
    return isNec() ? "nec" : Choice.word(this);
  }
}
