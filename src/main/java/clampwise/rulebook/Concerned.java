package clampwise.rulebook;

import clampwise.finding.Finding;
import clampwise.finding.Place;
import clampwise.finding.Subject;
import java.util.HashSet;
import java.util.Set;

/**
 * What a finding concerns: single modules and attachments, fields as a whole, or one other thing.
 *
 * @param single modules and attachments
 * @param whole fields that are meant as a whole, and other things
 * @param of the fields all of them belong to, and other things
 */
record Concerned(Set<String> single, Set<String> whole, Set<String> of) {

  private static final String FIELDS = "fields.";

  static Concerned of(Finding finding) {
    Concerned concerned = new Concerned(new HashSet<>(), new HashSet<>(), new HashSet<>());
    for (Place place : finding.places()) {
      concerned.add(place.subject().path());
    }
    return concerned;
  }

  private void add(String path) {
    if (!path.startsWith(FIELDS)) {
      of.add(path);
      whole.add(path);
      return;
    }
    int first = end(path, 0);
    of.add(path.substring(0, first));
    String part = path.substring(Math.min(path.length(), first + Subject.SEPARATOR.length()));
    if (part.startsWith("module ") || part.startsWith("attachment ")) {
      single.add(path.substring(0, end(path, first + Subject.SEPARATOR.length())));
    } else {
      whole.add(path.substring(0, first));
    }
  }

  private static int end(String path, int from) {
    int at = path.indexOf(Subject.SEPARATOR, from);
    return at < 0 ? path.length() : at;
  }

  /** Whether all that another finding concerns is concerned by this one too. */
  boolean holds(Concerned other) {
    for (String each : other.single) {
      boolean within = whole.contains(each.substring(0, end(each, 0)));
      if (!within && !single.contains(each)) {
        return false;
      }
    }
    return of.containsAll(other.whole);
  }
}
