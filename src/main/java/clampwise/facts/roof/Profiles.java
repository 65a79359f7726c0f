package clampwise.facts.roof;

import clampwise.job.Panel;
import clampwise.job.RoofAttachment;
import clampwise.job.SeamClamp;
import clampwise.job.Text;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Compares seam folds and rib profiles by name. */
final class Profiles {

  private Profiles() {}

  /** Whether a profile is in a list; an empty list or an unknown profile excludes nothing. */
  static boolean listed(List<Text> profiles, Optional<Text> profile) {
    return profiles.isEmpty() || profile.map(given -> contains(profiles, given)).orElse(true);
  }

  static boolean contains(List<Text> profiles, Text profile) {
    return profiles.stream().anyMatch(each -> key(each).equals(key(profile)));
  }

  /** Seam clamps go on standing seams, rib brackets on ribs and crests. */
  static boolean suitsKind(RoofAttachment part, Panel panel) {
    return part instanceof SeamClamp == isSeam(panel);
  }

  static boolean isSeam(Panel panel) {
    return panel.kind().value() == Panel.Kind.STANDING_SEAM;
  }

  static String kind(RoofAttachment part) {
    return part instanceof SeamClamp ? "seam clamp" : "rib bracket";
  }

  static String names(List<Text> profiles) {
    return profiles.stream().map(Text::value).collect(Collectors.joining(", "));
  }

  private static String key(Text text) {
    return text.value().trim().toLowerCase(Locale.ROOT).replace(' ', '-').replace('_', '-');
  }
}
