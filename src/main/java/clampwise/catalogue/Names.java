package clampwise.catalogue;

import clampwise.job.Named;
import clampwise.job.Text;
import clampwise.source.Article;
import clampwise.source.Nearest;
import clampwise.source.Problem;
import clampwise.source.Problems;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The known names of one kind of thing, against which references are held. */
final class Names {

  private final String kind;
  private final Problems problems;
  private final Set<String> known = new LinkedHashSet<>();
  private final Set<String> unreadable = new LinkedHashSet<>();
  private boolean lost;

  private Names(String kind, Problems problems) {
    this.kind = kind;
    this.problems = problems;
  }

  static Names of(String kind, Problems problems) {
    return new Names(kind, problems);
  }

  static Names of(String kind, Collection<String> known, Problems problems) {
    Names names = new Names(kind, problems);
    names.known.addAll(known);
    return names;
  }

  /** Names of several kinds together. */
  static Names union(String kind, List<Names> parts) {
    Names all = new Names(kind, parts.get(0).problems);
    for (Names part : parts) {
      all.known.addAll(part.known);
      all.unreadable.addAll(part.unreadable);
    }
    return all;
  }

  /** Adds the names of things, also of those that could not be read: their problem is known. */
  Names with(Named<?> things) {
    known.addAll(things.names());
    unreadable.addAll(things.unreadable());
    return this;
  }

  /** Takes any name where the section that holds the names could not be read. */
  Names unless(boolean sectionLost) {
    lost = known.isEmpty() && sectionLost;
    return this;
  }

  Problems problems() {
    return problems;
  }

  void require(Collection<Text> names) {
    names.forEach(this::require);
  }

  void require(Optional<Text> name) {
    name.ifPresent(this::require);
  }

  void require(Text name) {
    meant(name);
  }

  /** Reports a name that is not known; gives the known one that it most likely stands for. */
  Optional<String> meant(Text name) {
    String word = name.value();
    if (known.contains(word) || unreadable.contains(word) || lost) {
      return Optional.empty();
    }
    Optional<String> nearest = Nearest.to(word, known);
    String found = "no " + kind + " named \"" + word + "\"";
    problems.add(new Problem(name.at(), found, expected(), nearest));
    return nearest;
  }

  private String expected() {
    return known.isEmpty()
        ? Article.with(kind) + "; the job and the catalogue have none"
        : "the name of " + Article.with(kind);
  }
}
