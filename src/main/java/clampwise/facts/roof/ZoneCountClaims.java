package clampwise.facts.roof;

import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Question;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.layout.ZoneArea;
import clampwise.facts.layout.ZoneKeys;
import clampwise.finding.Subject;
import clampwise.job.Claims;
import clampwise.job.Count;
import clampwise.job.Named;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Holds the attachments the drawings count in each wind zone against the layout. An attachment
 * counts under the most exact of the names that mean its zone.
 */
final class ZoneCountClaims implements Question {

  @Override
  public void ask(Layout layout, Limits limits, Answers answers) {
    Named<Count> stated =
        layout.job().claims().map(Claims::attachmentsByZone).orElseGet(Named::none);
    if (!stated.isEmpty()) {
      Optional<String> unknown = CountClaims.unknown(layout).or(() -> zonesUnknown(layout));
      Map<String, Long> counted = unknown.isEmpty() ? counted(layout, stated) : Map.of();
      for (Named.Item<Count> item : stated.all()) {
        unknown.ifPresentOrElse(
            reason ->
                answers.missing(
                    ZoneCountClaim.class, subject(item.name().value()), reason, item.value().at()),
            () -> answers.add(fact(item, counted.getOrDefault(item.name().value(), 0L))));
      }
    }
  }

  private static Optional<String> zonesUnknown(Layout layout) {
    return layout.planes().stream()
        .filter(plane -> !plane.fields().isEmpty())
        .flatMap(plane -> plane.zonesUnknown().stream())
        .findFirst();
  }

  private static Map<String, Long> counted(Layout layout, Named<Count> stated) {
    return attachments(layout)
        .flatMap(attachment -> attachment.zone().map(ZoneArea::name).stream())
        .flatMap(zone -> ZoneKeys.keys(zone).filter(stated.names()::contains).limit(1))
        .collect(Collectors.groupingBy(key -> key, Collectors.counting()));
  }

  private static Stream<Attachment> attachments(Layout layout) {
    return layout.planes().stream()
        .map(PlaneLayout::fields)
        .flatMap(fields -> fields.stream().flatMap(field -> field.attachments().stream()));
  }

  private static ZoneCountClaim fact(Named.Item<Count> item, long counted) {
    int claimed = item.value().value();
    Subject subject = subject(item.name().value());
    return new ZoneCountClaim(
        subject,
        subject,
        item.value().at(),
        Unit.NUMBER,
        item.name().value(),
        claimed,
        (int) counted,
        Math.abs(claimed - (int) counted));
  }

  private static Subject subject(String zone) {
    return Subject.of("claims", "attachments by zone", "zone " + zone);
  }
}
