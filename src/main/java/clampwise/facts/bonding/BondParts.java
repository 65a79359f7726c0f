package clampwise.facts.bonding;

import clampwise.facts.Subjects;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.finding.Subject;
import clampwise.job.Bonding;
import clampwise.job.Bonding.Jumper;
import clampwise.job.Bonding.Lug;
import clampwise.job.BondingPart;
import clampwise.job.Flag;
import clampwise.job.ModuleClamp;
import clampwise.job.Named;
import clampwise.job.Parts;
import clampwise.job.Quantity.Length;
import clampwise.job.Text;
import clampwise.job.Unreadable;
import clampwise.source.Span;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Finds the parts that bond in the job and the catalogue. */
record BondParts(Bonding bonding, Parts parts, Unreadable unreadable) {

  static final String MID_CLAMP = "mid clamp";
  static final String JUMPER = "jumper";
  static final String LUG = "lug";
  private static final Subject BONDING = Subject.of("bonding");

  static BondParts of(Layout layout, Bonding bonding) {
    return new BondParts(
        bonding, layout.catalogue().with(layout.job()).parts(), layout.job().unreadable());
  }

  /** A clamp between two modules of a field. */
  BondPart midClamp(FieldLayout field, Optional<Text> name) {
    boolean named = name.isPresent() && name.equals(field.field().midClamp());
    Optional<ModuleClamp> clamp =
        named ? parts.midClamps().find(name.get().value()) : name.flatMap(this::clamp);
    Optional<Flag> rated = clamp.flatMap(ModuleClamp::bonding);
    Span at = name.map(Text::at).orElse(field.at());
    return new BondPart(Subjects.field(field.name()), MID_CLAMP, name, rated, at, unreadable);
  }

  BondPart jumper(Jumper jumper) {
    Optional<Text> name = jumper.part().or(bonding::jumper);
    Optional<Flag> rated = find(parts.jumpers(), name);
    Subject user = BONDING.part(word(jumper));
    return new BondPart(user, JUMPER, name, rated, at(name, jumper), unreadable);
  }

  BondPart lug(Lug lug) {
    Optional<Text> name = lug.part().or(bonding::lug);
    Subject user = BONDING.part("lug on " + lug.on());
    Span at = name.orElse(lug.on()).at();
    return new BondPart(user, LUG, name, find(parts.lugs(), name), at, unreadable);
  }

  /** Length of the jumper that is used where none is named, if it is known. */
  OptionalDouble jumperLengthM() {
    return bonding
        .jumper()
        .flatMap(name -> parts.jumpers().find(name.value()))
        .flatMap(BondingPart::length)
        .map(length -> OptionalDouble.of(length.m()))
        .orElse(OptionalDouble.empty());
  }

  /** Free length of a jumper, if it is known. */
  Optional<Length> lengthOf(Jumper jumper) {
    return jumper
        .part()
        .or(bonding::jumper)
        .flatMap(name -> parts.jumpers().find(name.value()))
        .flatMap(BondingPart::length);
  }

  /** Where a jumper is written. */
  static Optional<Span> at(Jumper jumper) {
    return Stream.of(jumper.from(), jumper.to(), jumper.field(), jumper.part())
        .flatMap(Optional::stream)
        .map(Text::at)
        .findFirst();
  }

  /** Where a jumper is written, else where its part is named. */
  Span placeOf(Jumper jumper) {
    Optional<Text> name = jumper.part().or(bonding::jumper);
    return at(jumper).or(() -> name.map(Text::at)).orElse(Span.startOf(""));
  }

  private Span at(Optional<Text> name, Jumper jumper) {
    return name.map(Text::at).or(() -> at(jumper)).orElse(Span.startOf(""));
  }

  static String word(Jumper jumper) {
    return jumper
        .field()
        .map(field -> "jumpers of field " + field)
        .orElseGet(() -> "jumper " + end(jumper.from()) + " to " + end(jumper.to()));
  }

  private static String end(Optional<Text> module) {
    return module.map(Text::value).orElse("nowhere");
  }

  private Optional<ModuleClamp> clamp(Text name) {
    return parts.midClamps().find(name.value()).or(() -> parts.endClamps().find(name.value()));
  }

  private static Optional<Flag> find(Named<BondingPart> shelf, Optional<Text> name) {
    return name.flatMap(part -> shelf.find(part.value())).flatMap(BondingPart::bonding);
  }
}
