package clampwise.catalogue;

import clampwise.job.Panel;
import clampwise.job.Parts;
import clampwise.job.RoofAttachment;
import clampwise.job.Text;
import clampwise.source.Nearest;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Tells a misspelt seam fold or rib profile from one that no part is made for. */
public final class ProfileNames {

  private final List<String> seams;
  private final List<String> ribs;

  /** The profiles that parts are made for. */
  public ProfileNames(Parts parts) {
    this.seams = profiles(parts.seamClamps().all().stream().map(clamp -> clamp.value()));
    this.ribs = profiles(parts.ribBrackets().all().stream().map(bracket -> bracket.value()));
  }

  private static List<String> profiles(Stream<? extends RoofAttachment> parts) {
    return parts
        .map(RoofAttachment::profiles)
        .flatMap(Collection::stream)
        .map(Text::value)
        .toList();
  }

  /**
   * The profile that a covering's most likely stands for, if no part is made for the written one.
   */
  public Optional<String> meant(Panel panel) {
    List<String> known = panel.kind().value() == Panel.Kind.STANDING_SEAM ? seams : ribs;
    return panel
        .profile()
        .map(Text::value)
        .filter(word -> known.stream().noneMatch(name -> folded(name).equals(folded(word))))
        .flatMap(word -> Nearest.to(word, known).filter(near -> digits(near).equals(digits(word))));
  }

  private static String folded(String name) {
    return name.trim().toLowerCase(Locale.ROOT).replace(' ', '-').replace('_', '-');
  }

  /** Another number is another profile, not a slip. */
  private static String digits(String name) {
    return name.replaceAll("[^0-9]", "");
  }
}
