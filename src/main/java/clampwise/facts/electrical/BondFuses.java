package clampwise.facts.electrical;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.facts.electrical.GroundingSizing.Least;
import clampwise.facts.layout.FieldLayout;
import clampwise.finding.Subject;
import clampwise.job.Bonding;
import clampwise.job.BondingPart;
import clampwise.job.Circuit.Kind;
import clampwise.job.ModuleClamp;
import clampwise.job.ModuleElectrics;
import clampwise.job.Named;
import clampwise.job.Parts;
import clampwise.job.Quantity.Current;
import clampwise.job.Quantity.WireSize;
import clampwise.job.Text;
import clampwise.units.Units;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Holds the fuse that bonding parts were tested for, and jumpers, against what they may carry. */
record BondFuses(Wiring wiring) {

  /** A module with its largest series fuse. */
  private record Fused(String module, double fuseA) {}

  /** A kind of part, with what its parts were tested for. */
  private record Kindred<T>(
      String kind, String shelf, Named<T> parts, Function<T, Optional<Current>> rated) {}

  static void ask(Wiring wiring) {
    new BondFuses(wiring).ask();
  }

  private void ask() {
    Kindred<BondingPart> lugs =
        new Kindred<>("lug", "lugs", parts().lugs(), BondingPart::seriesFuseAtMost);
    Kindred<BondingPart> jumpers =
        new Kindred<>("jumper", "jumpers", parts().jumpers(), BondingPart::seriesFuseAtMost);
    Kindred<ModuleClamp> clamps =
        new Kindred<>(
            "mid clamp", "mid-clamps", parts().midClamps(), ModuleClamp::seriesFuseAtMost);
    LugQuestions.names(wiring).forEach(name -> ask(lugs, name));
    jumperNames().forEach(name -> ask(jumpers, name));
    clampNames().forEach(name -> ask(clamps, name));
    jumperNames().forEach(this::askWire);
  }

  private Parts parts() {
    return wiring.catalogue().parts();
  }

  private Collection<Text> jumperNames() {
    Map<String, Text> names = new LinkedHashMap<>();
    Optional<Bonding> bonding = wiring.job().bonding();
    for (Bonding.Jumper jumper : bonding.map(Bonding::jumpers).orElse(List.of())) {
      jumper
          .part()
          .or(() -> bonding.flatMap(Bonding::jumper))
          .ifPresent(name -> names.putIfAbsent(name.value(), name));
    }
    return names.values();
  }

  private Collection<Text> clampNames() {
    Map<String, Text> names = new LinkedHashMap<>();
    for (FieldLayout field : wiring.layout().fields()) {
      boolean stacked = field.modules().stream().anyMatch(module -> module.row() > 1);
      field
          .field()
          .midClamp()
          .filter(clamp -> stacked)
          .ifPresent(name -> names.putIfAbsent(name.value(), name));
    }
    return names.values();
  }

  private static Subject subject(String kind, Text name) {
    return Wiring.ELECTRICAL.part(kind + " " + name);
  }

  private <T> void ask(Kindred<T> kindred, Text name) {
    Subject subject = subject(kindred.kind, name);
    Optional<Current> rated = kindred.parts.find(name.value()).flatMap(kindred.rated);
    Outcome<Fused> worst = worst();
    if (rated.isEmpty()) {
      String what = "the fuse that " + kindred.kind + " " + name + " was tested for";
      String reason =
          wiring
              .unreadable()
              .missing(what, "parts", kindred.shelf, name.value(), "series-fuse-at-most");
      wiring.missing(BondFuse.class, subject, reason, name.at());
    } else if (worst instanceof NotApplicable<Fused> unknown) {
      wiring.missing(BondFuse.class, subject, unknown.reason(), name.at());
    } else {
      Fused fused = worst.result().orElseThrow();
      wiring
          .answers()
          .add(
              new BondFuse(
                  subject,
                  name.at(),
                  Units.AMPERE,
                  kindred.kind,
                  name.value(),
                  rated.get().a(),
                  fused.module,
                  fused.fuseA,
                  fitting(kindred, fused.fuseA)));
    }
  }

  private static <T> Optional<String> fitting(Kindred<T> kindred, double fuseA) {
    String names =
        kindred.parts.all().stream()
            .filter(
                item -> kindred.rated.apply(item.value()).filter(a -> a.a() >= fuseA).isPresent())
            .map(item -> item.name().value())
            .collect(Collectors.joining(" or "));
    return Optional.of(names).filter(text -> !text.isEmpty());
  }

  /** The module of the layout that may have the largest fuse. */
  private Outcome<Fused> worst() {
    List<Fused> all = new ArrayList<>();
    for (FieldLayout field : wiring.layout().fields()) {
      Optional<Current> fuse = field.type().electrical().flatMap(ModuleElectrics::seriesFuseAtMost);
      if (fuse.isEmpty()) {
        return new NotApplicable<>(noFuse(field.typeName()));
      }
      all.add(new Fused(field.typeName(), fuse.get().a()));
    }
    return all.stream()
        .max(Comparator.comparingDouble(Fused::fuseA))
        .<Outcome<Fused>>map(Result::new)
        .orElseGet(() -> new NotApplicable<>("no field could be read and laid out as written"));
  }

  private String noFuse(String module) {
    return wiring
        .unreadable()
        .missing(
            "the largest series fuse of module " + module,
            "modules",
            module,
            "electrical",
            "series-fuse-at-most");
  }

  private void askWire(Text name) {
    Subject subject = subject("jumper", name);
    Optional<WireSize> size = parts().jumpers().find(name.value()).flatMap(BondingPart::size);
    List<CircuitCase> circuits = new ArrayList<>();
    CircuitCase.each(wiring, circuits::add);
    circuits.removeIf(circuit -> !circuit.is(Kind.DC) || circuit.grounding().isEmpty());
    if (!circuits.isEmpty() && size.isEmpty()) {
      String reason =
          wiring
              .unreadable()
              .missing("the size of jumper " + name, "parts", "jumpers", name.value(), "size");
      wiring.missing(JumperWire.class, subject, reason, name.at());
    } else {
      circuits.forEach(circuit -> askWire(name, size.orElseThrow(), circuit));
    }
  }

  private void askWire(Text name, WireSize size, CircuitCase circuit) {
    Subject subject = subject("jumper", name).part("circuit " + circuit.name());
    Outcome<Least> least = new GroundingSizing(circuit, circuit.grounding().orElseThrow()).least();
    if (least instanceof NotApplicable<Least> unknown) {
      wiring.missing(JumperWire.class, subject, unknown.reason(), name.at());
      return;
    }
    double leastM2 = least.result().orElseThrow().m2();
    wiring
        .answers()
        .add(
            new JumperWire(
                subject,
                name.at(),
                size.unit(),
                name.value(),
                circuit.name().value(),
                WireSizes.snapped(size.m2(), leastM2),
                leastM2,
                least.result().map(Least::from)));
  }
}
