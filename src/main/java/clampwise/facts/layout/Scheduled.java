package clampwise.facts.layout;

import java.util.List;
import java.util.Optional;

/** The attachments of a field as scheduled, or why they are not known. */
record Scheduled(List<Planned> planned, Optional<String> unknown) {

  static Scheduled of(List<Planned> planned) {
    return new Scheduled(planned, Optional.empty());
  }

  static Scheduled unknown(String why) {
    return new Scheduled(List.of(), Optional.of(why));
  }
}
