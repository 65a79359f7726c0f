package clampwise.job;

import java.util.Optional;

/** An electrical code with its edition. */
public enum ElectricalCode implements Choice.Edition {
  NEC_2017,
  NEC_2020,
  NEC_2023,
  IEC_62548,
  BS_7671,
  AS_NZS_5033;

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
    return textOfSite(job).flatMap(text -> Editions.of(values(), text.value()));
  }

  /** The code of the site as written. */
  public static Optional<Text> textOfSite(Job job) {
    return job.site().flatMap(Site::codes).flatMap(Site.Codes::electrical);
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
