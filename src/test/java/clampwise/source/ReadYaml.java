package clampwise.source;

import java.util.List;

/** A text read for a test, with what was said about it. */
record ReadYaml(YamlReader.Part part, List<Problem> problems) {

  static ReadYaml of(String text) {
    Problems problems = new Problems();
    YamlReader.Part part = YamlReader.readPart("job.yaml", text, problems);
    return new ReadYaml(part, problems.sorted());
  }

  static ReadYaml of(byte[] bytes) {
    Problems problems = new Problems();
    YamlReader.Part part = YamlReader.readPart("job.yaml", bytes, problems);
    return new ReadYaml(part, problems.sorted());
  }

  /** Every problem as {@code file:line:column found}. */
  List<String> said() {
    return problems.stream().map(problem -> problem.at() + " " + problem.found()).toList();
  }

  /** The value of a top-level key. */
  Node value(String key) {
    return ((Node.Mapping) part.root().orElseThrow()).get(key).orElseThrow();
  }
}
