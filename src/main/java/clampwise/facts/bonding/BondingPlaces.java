package clampwise.facts.bonding;

import clampwise.facts.layout.FieldLayout;
import clampwise.job.Bonding;
import clampwise.job.Bonding.Jumper;
import clampwise.job.Text;
import clampwise.source.Span;
import java.util.Optional;
import java.util.stream.Stream;

/** Where the bonding of a field is written. */
record BondingPlaces(Bonding bonding) {

  /** The first jumper of a field, else the first of any, else the lugs, else the field. */
  Span jumpers(FieldLayout field) {
    return Stream.of(first(field), jumper(), lug(), bonding.jumper().or(bonding::lug).map(Text::at))
        .flatMap(Optional::stream)
        .findFirst()
        .orElse(field.at());
  }

  /** The first lug, else where lugs would be written. */
  Span lugs(FieldLayout field) {
    return Stream.of(lug(), bonding.lug().map(Text::at), jumper(), bonding.jumper().map(Text::at))
        .flatMap(Optional::stream)
        .findFirst()
        .orElse(field.at());
  }

  private Optional<Span> first(FieldLayout field) {
    return bonding.jumpers().stream()
        .filter(jumper -> isOf(jumper, field.name()))
        .flatMap(jumper -> BondParts.at(jumper).stream())
        .findFirst();
  }

  private static boolean isOf(Jumper jumper, String field) {
    boolean whole = jumper.field().filter(name -> name.value().equals(field)).isPresent();
    return whole
        || Stream.of(jumper.from(), jumper.to())
            .flatMap(Optional::stream)
            .anyMatch(name -> name.value().startsWith(field + "."));
  }

  private Optional<Span> jumper() {
    return bonding.jumpers().stream().flatMap(jumper -> BondParts.at(jumper).stream()).findFirst();
  }

  private Optional<Span> lug() {
    return bonding.lugs().stream().map(lug -> lug.on().at()).findFirst();
  }
}
