package clampwise.rulebook.own;

import clampwise.finding.Severity;
import clampwise.rulebook.Template;
import clampwise.rulebook.WrittenLimit;
import clampwise.source.Nearest;
import clampwise.source.Problem;
import clampwise.source.Span;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What an own rule says of itself: all there, all readable, all of the fact that it judges. */
final class NoteCheck {
  private static final List<String> NEEDED =
      List.of("title", "severity", "judges", "message", "reason", "remedy", "basis", "since");
  private static final List<String> KNOWN =
      List.of(
          "title",
          "severity",
          "judges",
          "message",
          "reason",
          "remedy",
          "basis",
          "since",
          "measured",
          "limit",
          "editions",
          "follows");
  private static final Pattern START = Pattern.compile("(?m)^\\s*@(\\w+)");
  private static final Pattern VALUE =
      Pattern.compile("\\s*\\(\\s*\"((?:\\\\.|[^\"\\\\\\n])*)\"\\s*\\)");

  private record Note(String text, Span name, Span value) {}

  private final RuleSource source;
  private final FactTypes facts;
  private final Map<String, Note> notes = new LinkedHashMap<>();
  private final List<Problem> problems = new ArrayList<>();

  private NoteCheck(RuleSource source, FactTypes facts) {
    this.source = source;
    this.facts = facts;
  }

  static List<Problem> of(RuleSource source, FactTypes facts) {
    NoteCheck check = new NoteCheck(source, facts);
    check.read();
    check.needed();
    check.severity();
    check.judged();
    check.pair();
    check.writtenLimit();
    return check.problems;
  }

  private void read() {
    Matcher start = START.matcher(source.code());
    start.region(0, source.when());
    while (start.find()) {
      String name = start.group(1);
      Matcher value = VALUE.matcher(source.code()).region(start.end(), source.code().length());
      if (!KNOWN.contains(name)) {
        add(start, "@" + name, "one of " + String.join(", ", KNOWN), Nearest.to(name, KNOWN));
      }
      if (value.lookingAt()) {
        notes.put(name, new Note(value.group(1), source.span(start, 1), source.span(value, 1)));
      } else {
        add(start, "@" + name + " without a text", "@" + name + "(\"...\")", Optional.empty());
        notes.put(name, new Note("", source.span(start, 1), source.span(start, 1)));
      }
    }
  }

  private void needed() {
    List<String> missing = new ArrayList<>(NEEDED);
    missing.removeAll(notes.keySet());
    if (!missing.isEmpty()) {
      String found = "no @" + String.join(", no @", missing);
      problems.add(source.problem(ruleLine(), found, "each of them between rule and when"));
    }
  }

  private Span ruleLine() {
    Matcher rule = Pattern.compile("(?m)^\\s*(rule)\\b").matcher(source.bare());
    return rule.find() ? source.span(rule, 1) : Span.startOf(source.shown());
  }

  private void severity() {
    List<String> words = Arrays.stream(Severity.values()).map(Severity::word).toList();
    note("severity")
        .filter(note -> !words.contains(note.text()))
        .ifPresent(note -> add(note, "severity " + note.text(), words));
  }

  private Optional<Note> note(String name) {
    return Optional.ofNullable(notes.get(name)).filter(note -> !note.text().isEmpty());
  }

  private void judged() {
    Optional<Note> judges = note("judges");
    if (judges.isEmpty()) {
      return;
    }
    String fact = judges.get().text();
    Optional<String> full = facts.find(fact);
    if (full.isEmpty()) {
      add(judges.get(), "no fact called " + fact, facts.names());
      return;
    }
    Pattern pattern = Pattern.compile(":\\s*" + Pattern.quote(fact) + "\\s*\\(");
    if (!pattern.matcher(source.conditions()).find()) {
      notAsked(judges.get(), fact);
    } else if (!isImported(full.get())) {
      String wanted = "import " + full.get() + " above the rule";
      problems.add(source.problem(ruleLine(), fact + " without its import", wanted));
    }
    components(facts.components(fact));
  }

  /** Mostly because the condition misspells the fact. */
  private void notAsked(Note judges, String fact) {
    List<Problem> misspelt = FieldCheck.of(source, facts);
    String wanted = "the fact that the conditions ask about, $f : " + fact + "(...)";
    problems.addAll(
        misspelt.isEmpty()
            ? List.of(source.problem(judges.value(), "@judges " + fact, wanted))
            : misspelt);
  }

  private boolean isImported(String full) {
    String room = full.substring(0, full.lastIndexOf('.'));
    return Pattern.compile("(?m)^\\s*import\\s+(" + full + "|" + room + "\\.\\*)")
        .matcher(source.bare())
        .find();
  }

  private void components(List<String> known) {
    for (String text : List.of("message", "remedy")) {
      note(text).ifPresent(note -> placeholders(note, known));
    }
    note("measured").ifPresent(note -> component(note, note.text(), known));
    note("limit")
        .filter(note -> !Character.isDigit(note.text().charAt(0)))
        .ifPresent(note -> component(note, note.text(), known));
  }

  /** A limit that is written as a quantity is called by that name. */
  private void placeholders(Note note, List<String> known) {
    for (String name : Template.of(note.text()).names()) {
      boolean isLimit = name.equals("limit") && note("limit").isPresent();
      component(note, isLimit ? known.get(0) : name, known);
    }
  }

  private void component(Note note, String name, List<String> known) {
    if (!known.contains(name)) {
      String fact = note("judges").map(Note::text).orElse("");
      String expected = "something that " + fact + " holds (docs/facts.md)";
      problems.add(source.problem(note.value(), "no " + name, expected, Nearest.to(name, known)));
    }
  }

  private void writtenLimit() {
    Optional<String> measured = note("measured").map(Note::text);
    note("limit")
        .filter(note -> Character.isDigit(note.text().charAt(0)) && measured.isPresent())
        .ifPresent(
            note ->
                WrittenLimit.fault(note.text(), measured.orElse(""))
                    .ifPresent(
                        fault ->
                            problems.add(
                                source.problem(note.value(), fault.found(), fault.expected()))));
  }

  private void pair() {
    if (notes.containsKey("measured") != notes.containsKey("limit")) {
      String there = notes.containsKey("measured") ? "measured" : "limit";
      String other = there.equals("limit") ? "measured" : "limit";
      Note note = notes.getOrDefault(there, new Note("", ruleLine(), ruleLine()));
      String found = "@" + there + " without @" + other;
      problems.add(source.problem(note.name(), found, "both or none of them"));
    }
  }

  private void add(Note note, String found, List<String> known) {
    String expected = known.size() > 5 ? "a fact of docs/facts.md" : String.join(", ", known);
    problems.add(source.problem(note.value(), found, expected, Nearest.to(note.text(), known)));
  }

  private void add(Matcher at, String found, String expected, Optional<String> near) {
    problems.add(source.problem(source.span(at, 1), found, expected, near));
  }
}
