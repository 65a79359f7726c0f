package clampwise.rulebook;

import clampwise.source.Node;
import clampwise.source.Problems;
import clampwise.source.YamlReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** What a careful reviewer asks of a job, line by line, with the rules that judge it. */
record JobMap(List<Topic> topics) {

  private static final Path FILE = Path.of("shared/job-map.yaml");

  /** Lines that belong together. */
  record Topic(String title, List<Line> lines) {}

  /**
   * A line of the map.
   *
   * @param person what a person has to look at; empty where the rules see all of it
   */
  record Line(String id, String asks, List<String> rules, String person) {

    boolean isJudged() {
      return !rules.isEmpty();
    }
  }

  static JobMap read() throws IOException {
    Problems problems = new Problems();
    Node root = YamlReader.read(FILE.toString(), Files.readString(FILE), problems).orElseThrow();
    if (!problems.sorted().isEmpty()) {
      throw new AssertionError(problems.sorted());
    }
    List<Topic> topics = new ArrayList<>();
    for (Node.Entry topic : ((Node.Mapping) root).entries()) {
      List<Line> lines = new ArrayList<>();
      for (Node.Entry line : ((Node.Mapping) topic.value()).entries()) {
        lines.add(line(line.key().text(), (Node.Mapping) line.value()));
      }
      topics.add(new Topic(topic.key().text(), lines));
    }
    return new JobMap(topics);
  }

  private static Line line(String id, Node.Mapping written) {
    for (Node.Entry entry : written.entries()) {
      if (!List.of("asks", "rules", "person").contains(entry.key().text())) {
        throw new AssertionError(id + " has an unknown key: " + entry.key().text());
      }
    }
    List<String> rules = new ArrayList<>();
    for (Node rule : written.get("rules").map(JobMap::items).orElse(List.of())) {
      rules.add(((Node.Scalar) rule).text());
    }
    return new Line(id, text(written, "asks"), rules, text(written, "person"));
  }

  private static List<Node> items(Node sequence) {
    return ((Node.Sequence) sequence).items();
  }

  private static String text(Node.Mapping written, String key) {
    return written.get(key).map(node -> ((Node.Scalar) node).text()).orElse("");
  }

  /** All lines, with those beside the map. */
  List<Line> all() {
    return topics.stream().flatMap(topic -> topic.lines().stream()).toList();
  }

  /** The lines of the map itself, whose names are a letter and a number. */
  List<Line> lines() {
    return all().stream().filter(line -> line.id().matches("[A-H]\\d+")).toList();
  }

  /** The page of the table. */
  String page() {
    StringBuilder out = new StringBuilder();
    long judged = lines().stream().filter(Line::isJudged).count();
    out.append("# The job map and what judges it\n\n");
    out.append("The job map is what a careful reviewer asks of such a job, line by line: ")
        .append(lines().size())
        .append(" questions. ")
        .append(judged)
        .append(" are judged by rules; the others are *asked, not judged*, each with the reason. ");
    out.append("A rule judges what the job file says and nothing else; ");
    out.append(
        "what remains for a person beside the rules of a line stands in its last column.\n\n");
    out.append("The table is written from [shared/job-map.yaml](../shared/job-map.yaml); ");
    out.append(
        "a test fails when a line is missing, a rule is not in it or a rule in it does not exist.\n");
    topics.forEach(topic -> append(topic, out));
    return out.toString();
  }

  private static void append(Topic topic, StringBuilder out) {
    out.append("\n## ").append(topic.title()).append("\n\n");
    out.append("| line | asks | judged by | for a person |\n|---|---|---|---|\n");
    for (Line line : topic.lines()) {
      out.append("| ").append(line.id()).append(" | ").append(line.asks()).append(" | ");
      out.append(line.isJudged() ? links(line.rules()) : "*asked, not judged*");
      out.append(" | ").append(line.person()).append(" |\n");
    }
  }

  private static String links(List<String> rules) {
    List<String> links = new ArrayList<>();
    rules.forEach(rule -> links.add("[" + rule + "](rules/" + rule + ".md)"));
    return String.join(", ", links);
  }
}
