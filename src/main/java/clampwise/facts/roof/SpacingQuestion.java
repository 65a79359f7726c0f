package clampwise.facts.roof;

import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Fact;
import clampwise.facts.Question;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.layout.ZoneKeys;
import clampwise.job.Named;
import clampwise.job.Quantity.Length;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A question that holds spacings of attachments against those allowed in their wind zones. */
abstract class SpacingQuestion implements Question {

  private final Class<? extends Fact> type;
  private final String key;

  /**
   * A question about spacings.
   *
   * @param key where a field says what is allowed
   */
  SpacingQuestion(Class<? extends Fact> type, String key) {
    this.type = type;
    this.key = key;
  }

  /**
   * The widest stretch of a group within one zone.
   *
   * @param group what the field's stretches are grouped by
   */
  record Widest(int group, String zone, Stretch stretch) {

    private Widest orWider(Widest other) {
      return other.stretch.spacingM() > stretch.spacingM() ? other : this;
    }
  }

  private record Key(String zone, int group) implements Comparable<Key> {

    @Override
    public int compareTo(Key other) {
      return Comparator.comparing(Key::zone).thenComparingInt(Key::group).compare(this, other);
    }
  }

  /** What the spacings run along, in words. */
  abstract String direction(PlaneLayout plane);

  abstract Named<Length> allowed(FieldLayout field);

  abstract List<Stretch> stretches(FieldLayout field, Limits limits);

  /** What a stretch is grouped by, such as its line. */
  abstract int group(Stretch stretch);

  abstract Fact fact(PlaneLayout plane, FieldLayout field, Widest widest, Length allowed);

  @Override
  public final void ask(Layout layout, Limits limits, Answers answers) {
    for (PlaneLayout plane : layout.planes()) {
      for (FieldLayout field : plane.fields()) {
        unknown(plane, field)
            .ifPresentOrElse(
                reason -> missing(field, reason, answers),
                () -> ask(plane, field, stretches(field, limits), answers));
      }
    }
  }

  private Optional<String> unknown(PlaneLayout plane, FieldLayout field) {
    if (allowed(field).isEmpty()) {
      return Optional.of(noneAllowed(plane, field));
    }
    if (field.attachmentsUnknown().isPresent()) {
      return field.attachmentsUnknown();
    }
    return field.attachments().isEmpty()
        ? Optional.of("field " + field.name() + " has no attachments drawn")
        : plane.zonesUnknown();
  }

  private String noneAllowed(PlaneLayout plane, FieldLayout field) {
    return plane
        .reading()
        .unreadable()
        .unwritten(
            "field " + field.name() + " gives no allowed spacing along " + direction(plane),
            "the allowed spacing of field " + field.name() + " along " + direction(plane),
            "fields",
            field.name(),
            key);
  }

  private void missing(FieldLayout field, String reason, Answers answers) {
    answers.missing(type, RoofSubjects.field(field), reason, field.at());
  }

  private void ask(PlaneLayout plane, FieldLayout field, List<Stretch> stretches, Answers answers) {
    Map<Key, Widest> byZone = new TreeMap<>();
    for (Stretch stretch : stretches) {
      stretch
          .zone()
          .map(zone -> new Widest(group(stretch), zone.name(), stretch))
          .ifPresent(
              widest ->
                  byZone.merge(new Key(widest.zone(), widest.group()), widest, Widest::orWider));
    }
    byZone.values().forEach(widest -> answer(plane, field, widest, answers));
  }

  private void answer(PlaneLayout plane, FieldLayout field, Widest widest, Answers answers) {
    ZoneKeys.find(allowed(field), widest.zone())
        .ifPresentOrElse(
            allowed -> answers.add(fact(plane, field, widest, allowed)),
            () ->
                answers.missing(
                    type,
                    RoofSubjects.field(field).part("zone " + widest.zone()),
                    plane
                        .reading()
                        .unreadable()
                        .missing(
                            "an allowed spacing along "
                                + direction(plane)
                                + " for zone "
                                + widest.zone(),
                            "fields",
                            field.name(),
                            key),
                    field.at()));
  }
}
