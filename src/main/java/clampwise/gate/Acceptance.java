package clampwise.gate;

import clampwise.finding.Finding;
import clampwise.source.Problems;
import clampwise.source.SourceText;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Somebody accepts a finding.
 *
 * @param finding what was found
 * @param reason why it is accepted
 * @param by person or role that answers for it
 * @param on day on which it is accepted
 * @param until last day on which that holds
 * @param revision revision of the drawings for which it holds; every one when empty
 */
public record Acceptance(
    Finding finding,
    String reason,
    String by,
    LocalDate on,
    LocalDate until,
    Optional<String> revision) {

  private static final String HEAD =
      """
      # Deviations that somebody accepted for the job beside this file. Each is shown in every report
      # until its last day; see docs/gate.md. clampwise accept adds one.
      accepted:
      """;

  /**
   * A file of deviations with this one more; everything else in it stays as it was written.
   *
   * @param existing the file as it is; empty if there is none
   * @return empty where the file is written in a way to which nothing can be added safely
   */
  public Optional<String> addTo(String existing) {
    String base = existing.isBlank() ? HEAD : existing.endsWith("\n") ? existing : existing + "\n";
    String text = base + entry();
    return count(text) == count(existing) + 1 ? Optional.of(text) : Optional.empty();
  }

  /** How many deviations a text holds; less than none where it cannot be read. */
  private static int count(String text) {
    if (text.isBlank()) {
      return 0;
    }
    Problems problems = new Problems();
    SourceText source = new SourceText("", text.getBytes(StandardCharsets.UTF_8));
    List<DeviationFile.Deviation> all =
        Beside.of(source, DeviationFile.class, problems)
            .map(DeviationFile::accepted)
            .orElse(List.of());
    return problems.isEmpty() ? all.size() : Integer.MIN_VALUE;
  }

  private String entry() {
    StringBuilder text = new StringBuilder();
    String mark = "  - ";
    for (Map.Entry<String, String> one : values().entrySet()) {
      text.append(mark).append(one.getKey()).append(": ").append(one.getValue()).append('\n');
      mark = "    ";
    }
    return text.toString();
  }

  /** The deviation in one line, for those who write it themselves. */
  public String inOneLine() {
    List<String> parts = new ArrayList<>();
    values().forEach((key, value) -> parts.add(key + ": " + value));
    return "- {" + String.join(", ", parts) + "}";
  }

  private Map<String, String> values() {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("rule", YamlText.of(finding.rule()));
    values.put("subject", YamlText.of(finding.cause().path()));
    if (!finding.loadCase().isEmpty()) {
      values.put("load-case", YamlText.of(finding.loadCase()));
    }
    values.put("reason", YamlText.of(reason));
    values.put("by", YamlText.of(by));
    values.put("on", on.toString());
    values.put("until", until.toString());
    revision.ifPresent(own -> values.put("revision", YamlText.of(own)));
    Extent.written(finding).ifPresent(value -> values.put("value", YamlText.of(value)));
    values.put("places", Integer.toString(finding.places().size()));
    return values;
  }
}
