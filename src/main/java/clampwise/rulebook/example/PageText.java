package clampwise.rulebook.example;

import clampwise.rulebook.RulePage;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A rule page taken apart. */
public record PageText(String name, List<String> lines) {

  /** What every page is divided into. */
  public static final List<String> HEADINGS =
      List.of(
          "What is checked",
          "Why it matters",
          "How it is computed",
          "Examples",
          "How to correct",
          "Sources");

  private static final Pattern BASE = Pattern.compile("# base: ([\\w-]+)");
  private static final Pattern MARK = Pattern.compile("# <- finding\\s*$");

  /** Takes a page apart. */
  public static PageText of(RulePage page) {
    return new PageText(page.id() + ".md", page.text().lines().toList());
  }

  /** Its headings in their order. */
  public List<String> headings() {
    return lines.stream()
        .filter(l -> l.startsWith("## "))
        .map(l -> l.substring(3).strip())
        .toList();
  }

  /** The text below a heading. */
  public String section(String heading) {
    int from = lines.indexOf("## " + heading) + 1;
    int to = from;
    while (to < lines.size() && !lines.get(to).startsWith("## ")) {
      to++;
    }
    return String.join("\n", lines.subList(from, to)).strip();
  }

  /** Its examples in their order. */
  public List<PageExample> examples() {
    List<PageExample> examples = new ArrayList<>();
    String title = "";
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      if (line.startsWith("#")) {
        title = line.startsWith("### ") ? line.substring(4).strip() : "";
      } else if (line.startsWith("```yaml") && !title.isEmpty()) {
        examples.add(example(title, i + 1));
      }
    }
    return examples;
  }

  private PageExample example(String title, int first) {
    StringBuilder yaml = new StringBuilder("\n".repeat(first));
    SortedSet<Integer> marked = new TreeSet<>();
    int last = first;
    while (last < lines.size() && !lines.get(last).startsWith("```")) {
      yaml.append(lines.get(last)).append('\n');
      if (MARK.matcher(lines.get(last)).find()) {
        marked.add(last + 1);
      }
      last++;
    }
    return new PageExample(
        name, title, base(first < lines.size() ? lines.get(first) : ""), yaml.toString(), marked);
  }

  private static String base(String line) {
    Matcher base = BASE.matcher(line);
    return base.find() ? base.group(1) : "";
  }
}
