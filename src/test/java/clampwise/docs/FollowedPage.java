package clampwise.docs;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A page that is followed step by step: files that it has one write (a block after a line {@code
 * <!-- file: NAME -->}) and commands with what they print (a console block, in which commands begin
 * with {@code $}).
 */
record FollowedPage(List<Step> steps) {
  private static final Pattern FILE = Pattern.compile("<!-- file: (\\S+) -->");
  private static final Pattern FENCE = Pattern.compile("(`{3,})(\\w*)");

  /** One thing to do. */
  sealed interface Step {}

  /** A file to write. */
  record Write(String file, String text) implements Step {}

  /** A command to run, and what it prints. */
  record Run(String command, String output) implements Step {}

  static FollowedPage of(Path page) throws IOException {
    List<String> lines = Files.readAllLines(page);
    List<Step> steps = new ArrayList<>();
    String file = "";
    for (int i = 0; i < lines.size(); i++) {
      Matcher named = FILE.matcher(lines.get(i));
      Matcher fence = FENCE.matcher(lines.get(i));
      if (named.matches()) {
        file = named.group(1);
      } else if (fence.matches()) {
        List<String> block = block(lines, i + 1, fence.group(1));
        i += block.size() + 1;
        if (!file.isEmpty()) {
          steps.add(new Write(file, String.join("\n", block) + "\n"));
        } else if (fence.group(2).equals("console")) {
          steps.addAll(runs(block));
        }
        file = "";
      }
    }
    return new FollowedPage(steps);
  }

  private static List<String> block(List<String> lines, int from, String fence) {
    int to = from;
    while (!lines.get(to).equals(fence)) {
      to++;
    }
    return lines.subList(from, to);
  }

  private static List<Step> runs(List<String> block) {
    List<Step> runs = new ArrayList<>();
    String command = "";
    StringBuilder output = new StringBuilder();
    for (String line : block) {
      if (line.startsWith("$ ")) {
        if (!command.isEmpty()) {
          runs.add(new Run(command, output.toString()));
        }
        command = line.substring(2);
        output.setLength(0);
      } else {
        output.append(line).append('\n');
      }
    }
    runs.add(new Run(command, output.toString()));
    return runs;
  }

  /** The page with what its commands printed when they were run. */
  static void rewrite(Path page, List<Run> old, List<Run> fresh) throws IOException {
    String text = Files.readString(page);
    StringBuilder written = new StringBuilder();
    int done = 0;
    for (int i = 0; i < old.size(); i++) {
      String before = "$ " + old.get(i).command() + "\n" + old.get(i).output();
      int at = text.indexOf(before, done);
      written.append(text, done, at).append("$ ").append(fresh.get(i).command()).append('\n');
      written.append(fresh.get(i).output());
      done = at + before.length();
    }
    written.append(text.substring(done));
    Files.writeString(page, written, UTF_8);
  }
}
