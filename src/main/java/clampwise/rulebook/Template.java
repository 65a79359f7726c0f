package clampwise.rulebook;

import clampwise.source.Article;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A text with placeholders: {@code {name}} is replaced by the component of that name, {@code
 * {name|words}} by the words where the component is empty, {@code {name:one/many}} by the first
 * word where the component is the number 1 and by the second where it is another.
 */
public record Template(List<Template.Part> parts) {

  /** Compiled where a text is read, which a finished program does not do. */
  private static final String SLOT = "\\{([A-Za-z]\\w*)(?:\\|([^{}]*)|:([^{}/]*)/([^{}/]*))?}";

  private static final List<String> ARTICLES = List.of("a ", "an ");

  /** A piece of the text. */
  public sealed interface Part {}

  /** Words that stand as they are. */
  public record Words(String text) implements Part {}

  /**
   * A placeholder.
   *
   * @param name component it stands for
   * @param otherwise words used where the component is empty
   */
  public record Slot(String name, String otherwise) implements Part {}

  /**
   * Words for one or for many of something.
   *
   * @param name component that holds the number
   */
  public record Plural(String name, String one, String many) implements Part {

    String words(String number) {
      return number.equals("1") ? one : many;
    }
  }

  /** Reads a text with placeholders. */
  public static Template of(String text) {
    List<Part> parts = new ArrayList<>();
    Matcher slot = Pattern.compile(SLOT).matcher(text);
    int done = 0;
    while (slot.find()) {
      parts.add(new Words(text.substring(done, slot.start())));
      parts.add(placeholder(slot));
      done = slot.end();
    }
    parts.add(new Words(text.substring(done)));
    return new Template(List.copyOf(parts));
  }

  private static Part placeholder(MatchResult slot) {
    return slot.group(3) == null
        ? new Slot(slot.group(1), Optional.ofNullable(slot.group(2)).orElse(""))
        : new Plural(slot.group(1), slot.group(3), slot.group(4));
  }

  /** The names of all placeholders. */
  public List<String> names() {
    return parts.stream().flatMap(part -> name(part).stream()).toList();
  }

  private static Optional<String> name(Part part) {
    if (part instanceof Slot slot) {
      return Optional.of(slot.name());
    }
    return part instanceof Plural plural ? Optional.of(plural.name()) : Optional.empty();
  }

  /**
   * The text with its placeholders filled; an article before a placeholder follows what fills it.
   *
   * @param component the printed component of a name, empty if it holds nothing
   */
  public String fill(Function<String, Optional<String>> component) {
    StringBuilder text = new StringBuilder();
    for (Part part : parts) {
      if (part instanceof Slot slot) {
        append(text, component.apply(slot.name()).orElse(slot.otherwise()));
      } else if (part instanceof Plural plural) {
        text.append(plural.words(component.apply(plural.name()).orElse("")));
      } else if (part instanceof Words words) {
        text.append(words.text());
      }
    }
    return text.toString();
  }

  private static void append(StringBuilder text, String filled) {
    for (String article : ARTICLES) {
      int start = text.length() - article.length();
      if (start >= 0 && text.indexOf(article, start) == start && beginsWord(text, start)) {
        text.setLength(start);
        text.append(Article.of(filled)).append(' ');
      }
    }
    text.append(filled);
  }

  private static boolean beginsWord(StringBuilder text, int start) {
    return start == 0 || text.charAt(start - 1) == ' ';
  }
}
