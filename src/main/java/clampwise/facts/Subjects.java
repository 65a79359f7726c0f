package clampwise.facts;

import clampwise.facts.layout.PlacedModule;
import clampwise.finding.Subject;
import clampwise.job.Job;
import clampwise.source.Span;
import java.util.ArrayList;
import java.util.List;

/** Names what facts are about, the same way everywhere. */
public final class Subjects {

  private Subjects() {}

  /** A field, such as {@code fields.A}. */
  public static Subject field(String name) {
    return Subject.of("fields." + name);
  }

  /** A roof plane, such as {@code planes.south}. */
  public static Subject plane(String name) {
    return Subject.of("planes." + name);
  }

  /** A roof covering, such as {@code panels.barn roof}. */
  public static Subject panel(String name) {
    return Subject.of("panels." + name);
  }

  /** A module, such as {@code fields.A / module R2C3}. */
  public static Subject module(PlacedModule module) {
    return field(module.field()).part("module " + place(module));
  }

  private static String place(PlacedModule module) {
    String before = module.field() + ".";
    return module.name().startsWith(before)
        ? module.name().substring(before.length())
        : module.name();
  }

  /**
   * Where a subject stands in its job: at the last of its words that is a key, such as {@code
   * cables} of {@code electrical / cables / clip}; else at the name of the job.
   */
  public static Span at(Subject subject, Job job) {
    List<String> keys = new ArrayList<>();
    for (String part : words(subject.path(), Subject.SEPARATOR)) {
      keys.addAll(keys.isEmpty() ? words(part, ".") : List.of(part.replace(' ', '-')));
    }
    return job.at(keys);
  }

  private static List<String> words(String text, String between) {
    List<String> words = new ArrayList<>();
    int start = 0;
    for (int end = text.indexOf(between); end >= 0; end = text.indexOf(between, start)) {
      words.add(text.substring(start, end));
      start = end + between.length();
    }
    words.add(text.substring(start));
    return words;
  }
}
