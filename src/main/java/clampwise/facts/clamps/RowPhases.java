package clampwise.facts.clamps;

import clampwise.facts.layout.LineWord;
import clampwise.facts.layout.PlacedModule;
import clampwise.finding.Subject;
import clampwise.job.LengthRange;
import clampwise.source.Span;
import clampwise.units.QuantityPrint;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Asks of each row how many of its modules the seams allow to be clamped in the zone. */
final class RowPhases {

  private final FieldCase asked;
  private final ZoneSeams seams;
  private final RowStarts starts;
  private final Set<String> told = new HashSet<>();
  private final Map<String, String> better = new HashMap<>();

  private RowPhases(FieldCase asked) {
    this.asked = asked;
    this.seams = ZoneSeams.of(asked);
    this.starts = new RowStarts(asked, seams);
  }

  static void ask(FieldCase asked) {
    RowPhases phases = new RowPhases(asked);
    if (phases.seams.areKnown()) {
      ModuleRow.of(asked.field()).forEach(phases::judge);
    } else {
      asked.missing(
          RowPhase.class,
          asked.subject(),
          asked.plane().reading().seamsUnknown(),
          asked.field().field().plane().at());
    }
  }

  private void judge(ModuleRow row) {
    Optional<String> unusable =
        row.modules().stream().flatMap(module -> seams.unusable(module).stream()).findFirst();
    if (unusable.isPresent()) {
      tell(unusable.get());
    } else {
      asked.add(fact(row));
    }
  }

  private void tell(String reason) {
    if (told.add(reason)) {
      asked.missing(RowPhase.class, asked.subject(), reason, asked.field().field().module().at());
    }
  }

  private RowPhase fact(ModuleRow row) {
    int inZone = (int) row.modules().stream().filter(seams::allow).count();
    Span at = row.start().spot().at();
    return new RowPhase(
        asked.subject().part(row.name()),
        cause(row),
        at,
        row.start().spot().along().unit(),
        row.name() + " of field " + asked.field().name(),
        LineWord.of(asked.plane().panel()).many(),
        row.modules().size(),
        inZone,
        zone(row.modules().get(0)),
        row.startM(),
        inZone == row.modules().size() ? "" : better(row));
  }

  private Subject cause(ModuleRow row) {
    int column = row.start().column();
    return asked.subject().part(column == 1 ? "start" : "start of column " + column);
  }

  private String better(ModuleRow row) {
    String columns =
        row.modules().stream()
            .map(module -> module.column() + " " + module.typeName())
            .collect(Collectors.joining(","));
    return better.computeIfAbsent(columns, key -> starts.better(row));
  }

  private String zone(PlacedModule module) {
    return seams.zones(module).rows().stream()
        .map(row -> text(row.zone()))
        .distinct()
        .collect(Collectors.joining(" or "));
  }

  static String text(LengthRange range) {
    return QuantityPrint.text(range.min().m(), range.min().unit())
        + " to "
        + QuantityPrint.text(range.max().m(), range.max().unit());
  }
}
