package clampwise.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A text with placeholders: {@code {name}} is replaced by the component of that name, {@code
 * {name|words}} by the words where the component is empty.
 */
public record Template(List<Template.Part> parts) {
  private static final Pattern SLOT = Pattern.compile("\\{([A-Za-z]\\w*)(?:\\|([^{}]*))?}");

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

  /** Reads a text with placeholders. */
  public static Template of(String text) {
    List<Part> parts = new ArrayList<>();
    Matcher slot = SLOT.matcher(text);
    int done = 0;
    while (slot.find()) {
      parts.add(new Words(text.substring(done, slot.start())));
      parts.add(new Slot(slot.group(1), Optional.ofNullable(slot.group(2)).orElse("")));
      done = slot.end();
    }
    parts.add(new Words(text.substring(done)));
    return new Template(List.copyOf(parts));
  }

  /** The names of all placeholders. */
  public List<String> names() {
    return parts.stream().filter(Slot.class::isInstance).map(part -> ((Slot) part).name()).toList();
  }

  /**
   * The text with its placeholders filled.
   *
   * @param component the printed component of a name, empty if it holds nothing
   */
  public String fill(Function<String, Optional<String>> component) {
    StringBuilder text = new StringBuilder();
    for (Part part : parts) {
      if (part instanceof Slot slot) {
        text.append(component.apply(slot.name()).orElse(slot.otherwise()));
      } else if (part instanceof Words words) {
        text.append(words.text());
      }
    }
    return text.toString();
  }
}
