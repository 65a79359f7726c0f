package clampwise.facts.electrical;

import clampwise.facts.Subjects;
import clampwise.facts.layout.FieldLayout;
import clampwise.finding.Subject;
import clampwise.job.Count;
import clampwise.job.Electrical.PvString;
import clampwise.job.Named;
import clampwise.job.Text;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Counts the modules of each field that the strings take up. */
final class StringTallies {

  private final Wiring wiring;
  private final Collection<Named.Item<PvString>> strings;

  private StringTallies(Wiring wiring) {
    this.wiring = wiring;
    this.strings = wiring.electrical().strings().all();
  }

  static void ask(Wiring wiring) {
    StringTallies tallies = new StringTallies(wiring);
    if (!tallies.strings.isEmpty() || wiring.isLost("strings")) {
      wiring.layout().fields().forEach(tallies::ask);
    }
  }

  private void ask(FieldLayout field) {
    Subject subject = Subjects.field(field.name()).part("strings");
    Optional<String> unknown = unknown(field);
    if (unknown.isPresent()) {
      wiring.missing(StringTally.class, subject, unknown.get(), place(List.of()));
      return;
    }
    List<Named.Item<PvString>> own =
        strings.stream().filter(item -> isOf(item.value(), field.name())).toList();
    int strung = own.stream().mapToInt(item -> modules(item.value())).sum();
    int placed = field.modules().size();
    wiring
        .answers()
        .add(
            new StringTally(
                subject, place(own), Unit.NUMBER, field.name(), strung, placed, words(own)));
  }

  private Optional<String> unknown(FieldLayout field) {
    if (wiring.isLost("strings")) {
      return Optional.of("not all strings could be read");
    }
    if (wiring.layout().incomplete().contains(field.name())) {
      return Optional.of("field " + field.name() + " could not be read or laid out as written");
    }
    return strings.stream()
        .filter(item -> item.value().field().isEmpty())
        .findFirst()
        .map(item -> "the field of string " + item.name() + " is not given (field)");
  }

  private static boolean isOf(PvString string, String field) {
    return string.field().map(Text::value).filter(field::equals).isPresent();
  }

  private static int modules(PvString string) {
    return string.inSeries().value() * count(string);
  }

  private static int count(PvString string) {
    return string.count().map(Count::value).orElse(1);
  }

  private Span place(List<Named.Item<PvString>> own) {
    return own.stream()
        .map(item -> item.value().inSeries().at())
        .findFirst()
        .or(() -> strings.stream().map(item -> item.name().at()).findFirst())
        .orElseGet(() -> wiring.job().at("electrical", "strings"));
  }

  private static String words(List<Named.Item<PvString>> own) {
    String sum =
        own.stream()
            .map(item -> count(item.value()) + " x " + item.value().inSeries().value())
            .collect(Collectors.joining(" + "));
    return sum.isEmpty() ? "no string names it" : sum;
  }
}
