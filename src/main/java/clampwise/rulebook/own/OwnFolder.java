package clampwise.rulebook.own;

import static java.nio.charset.StandardCharsets.UTF_8;

import clampwise.finding.Severity;
import clampwise.rulebook.RuleIndex;
import clampwise.rulebook.RulePage;
import clampwise.rulebook.build.RuleText;
import clampwise.source.Problem;
import clampwise.source.Span;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A folder of own rules as it was read: a folder a topic, in it a rule and its page under one name.
 *
 * @param shown the folder as it was named
 * @param rules the rules, in order of their files
 * @param pages the text of each page, by the name of its file
 * @param problems what could not be read
 */
record OwnFolder(
    String shown, List<RuleSource> rules, Map<String, String> pages, List<Problem> problems) {
  private static final String RULE = ".drl";
  private static final String PAGE = ".md";
  private static final String BASE = "base";

  /** What the id of every own rule begins with. */
  private static final String OWN = "own-";

  /** Reads a folder; empty if there is none. */
  static Optional<OwnFolder> read(Path folder, String shown) throws IOException {
    if (!Files.isDirectory(folder)) {
      return Optional.empty();
    }
    OwnFolder read = new OwnFolder(shown, new ArrayList<>(), new TreeMap<>(), new ArrayList<>());
    try (Stream<Path> files = Files.walk(folder, 2)) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        read.take(folder.relativize(file).toString().replace('\\', '/'), file);
      }
    }
    read.oneIdEach();
    read.noLonePage();
    return Optional.of(read);
  }

  private void take(String name, Path file) throws IOException {
    boolean inTopic = name.contains("/") && !name.startsWith(BASE + "/");
    if (name.endsWith(PAGE) && inTopic) {
      pages.put(name, text(name, file));
    } else if (name.endsWith(RULE) && inTopic) {
      rules.add(RuleSource.of(new RuleText(name, text(name, file)), path(name)));
    } else if (name.endsWith(RULE)) {
      problem(name, "a rule outside a topic", "a folder of its topic, such as clamps/" + name);
    } else if (name.toLowerCase(Locale.ROOT).endsWith(RULE)) {
      problem(name, "an ending in capitals", "a name that ends in " + RULE);
    }
  }

  private String text(String name, Path file) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    try {
      return UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString().replace("\r\n", "\n");
    } catch (CharacterCodingException e) {
      problem(name, "a file that is not UTF-8", "a text in UTF-8");
      return "";
    }
  }

  private String path(String name) {
    return shown.endsWith("/") ? shown + name : shown + "/" + name;
  }

  private void problem(String name, String found, String expected) {
    problems.add(Problem.of(Span.startOf(path(name)), found, expected));
  }

  /** A page under a name that no rule has is mostly that of a rule that went astray. */
  private void noLonePage() {
    for (String page : pages.keySet()) {
      String stem = page.substring(0, page.length() - PAGE.length());
      String id = stem.substring(stem.lastIndexOf('/') + 1);
      boolean rule = rules.stream().anyMatch(one -> one.rule().file().equals(stem + RULE));
      if (id.startsWith(OWN) && !rule) {
        problem(page, "a page without its rule", id + RULE + " beside it");
      }
    }
  }

  private void oneIdEach() {
    Map<String, String> byId = new HashMap<>();
    for (RuleSource rule : rules) {
      String other = byId.putIfAbsent(rule.rule().id(), rule.shown());
      if (other != null) {
        problem(rule.rule().file(), "a name that " + other + " has too", "a name of its own");
      }
    }
  }

  /** The page beside a rule. */
  Optional<RulePage> page(RuleSource source) {
    RuleText rule = source.rule();
    String file = rule.topic() + "/" + rule.id() + PAGE;
    return Optional.ofNullable(pages.get(file))
        .map(text -> new RulePage(rule.id(), rule.topic(), severity(rule), text));
  }

  private static Severity severity(RuleText rule) {
    for (Severity severity : Severity.values()) {
      if (severity.word().equals(rule.note("severity"))) {
        return severity;
      }
    }
    return Severity.ERROR;
  }

  /** What the compiled rules depend on. */
  String rulesDigest() {
    Digest digest = new Digest().add(RuleIndex.text(RuleIndex.STAMP).orElse(""));
    CompilerDoor.parts().forEach(digest::add);
    rules.forEach(rule -> digest.add(rule.rule().file()).add(rule.rule().text()));
    return digest.hex();
  }

  /** What the findings depend on, and what is said of them. */
  String digest() {
    Digest digest = new Digest().add(rulesDigest());
    pages.forEach((name, text) -> digest.add(name).add(text));
    return digest.hex();
  }
}
