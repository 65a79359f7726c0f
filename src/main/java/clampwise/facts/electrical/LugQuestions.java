package clampwise.facts.electrical;

import clampwise.catalogue.Fits;
import clampwise.catalogue.Fits.Need;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.job.Bonding;
import clampwise.job.BondingPart;
import clampwise.job.Choice;
import clampwise.job.Circuit.ConductorMetal;
import clampwise.job.Circuit.Grounding;
import clampwise.job.Circuit.Kind;
import clampwise.job.Flag;
import clampwise.job.Quantity.WireSize;
import clampwise.job.Text;
import clampwise.units.Unit;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** Asks of each kind of lug whether it suits the weather, the frame and the conductor in it. */
record LugQuestions(Wiring wiring, Text lug, Optional<BondingPart> part) {

  private static final String WET = "a listing for wet places";
  private static final String FINISH = "a tinned or stainless finish";

  static void ask(Wiring wiring) {
    for (Text name : names(wiring)) {
      LugQuestions lug =
          new LugQuestions(wiring, name, wiring.catalogue().parts().lugs().find(name.value()));
      lug.askWeather();
      lug.askFinish();
      CircuitCase.each(wiring, lug::askConductor);
    }
  }

  /** The lugs in use, each name once. */
  static Collection<Text> names(Wiring wiring) {
    Map<String, Text> names = new LinkedHashMap<>();
    Optional<Bonding> bonding = wiring.job().bonding();
    for (Bonding.Lug lug : bonding.map(Bonding::lugs).orElse(List.of())) {
      lug.part()
          .or(() -> bonding.flatMap(Bonding::lug))
          .ifPresent(name -> names.putIfAbsent(name.value(), name));
    }
    return names.values();
  }

  private Subject subject() {
    return Wiring.ELECTRICAL.part("lug " + lug);
  }

  private void askWeather() {
    Optional<Flag> rated = part.flatMap(BondingPart::wetRated);
    if (rated.isEmpty()) {
      missing(
          LugWeather.class, lacks("whether lug " + lug + " is listed for wet places", "wet-rated"));
    } else {
      Optional<String> fitting = fitting(WET, p -> p.wetRated().filter(Flag::value).isPresent());
      add(
          new LugWeather(
              subject(), lug.at(), Unit.NUMBER, lug.value(), rated.get().value(), fitting));
    }
  }

  private void askFinish() {
    Optional<Text> finish = part.flatMap(BondingPart::finish);
    if (finish.isEmpty()) {
      missing(LugFinish.class, lacks("the finish of lug " + lug, "finish"));
    } else {
      Optional<String> fitting =
          fitting(FINISH, p -> p.finish().filter(f -> !isBareCopper(f)).isPresent());
      add(
          new LugFinish(
              subject(),
              lug.at(),
              Unit.NUMBER,
              lug.value(),
              finish.get().value(),
              isBareCopper(finish.get()),
              fitting));
    }
  }

  private static boolean isBareCopper(Text finish) {
    String words = finish.value().toLowerCase(Locale.ROOT);
    boolean copper =
        words.contains("copper") || words.contains("brass") || words.contains("bronze");
    return copper && !words.contains("tin");
  }

  private void askConductor(CircuitCase circuit) {
    if (circuit.is(Kind.DC)) {
      circuit.grounding().ifPresent(grounding -> askConductor(circuit, grounding));
    }
  }

  private void askConductor(CircuitCase circuit, Grounding grounding) {
    if (grounding.size().isEmpty()) {
      String what = "the size of the grounding conductor";
      missing(LugWire.class, circuit.lacks(what, "grounding", "size"));
    } else if (least().isEmpty() || most().isEmpty()) {
      String key = least().isEmpty() ? "wire-at-least" : "wire-at-most";
      missing(LugWire.class, lacks("the conductors that lug " + lug + " takes", key));
    } else if (!isTooSmall(circuit, grounding)) {
      add(wire(circuit, grounding.size().get()));
    }
    askMetal(circuit, grounding);
  }

  /** What is too small for its circuit has to be replaced before it meets the lug. */
  private static boolean isTooSmall(CircuitCase circuit, Grounding grounding) {
    double sizeM2 = grounding.size().map(WireSize::m2).orElse(0.0);
    return new GroundingSizing(circuit, grounding)
        .least()
        .result()
        .filter(least -> WireSizes.snapped(sizeM2, least.m2()) < least.m2())
        .isPresent();
  }

  private Optional<WireSize> least() {
    return part.flatMap(BondingPart::wireAtLeast);
  }

  private Optional<WireSize> most() {
    return part.flatMap(BondingPart::wireAtMost);
  }

  private LugWire wire(CircuitCase circuit, WireSize size) {
    double minM2 = least().orElseThrow().m2();
    double maxM2 = most().orElseThrow().m2();
    double sizeM2 = WireSizes.snapped(WireSizes.snapped(size.m2(), minM2), maxM2);
    return new LugWire(
        subject().part("circuit " + circuit.name()),
        lug.at(),
        least().orElseThrow().unit(),
        lug.value(),
        circuit.name().value(),
        sizeM2,
        minM2,
        maxM2,
        sizeM2 < minM2 ? minM2 : maxM2,
        fitting("the size of the conductor", other -> takes(other, size.m2())));
  }

  private static boolean takes(BondingPart other, double sizeM2) {
    return other.wireAtLeast().filter(w -> sizeM2 >= WireSizes.snapped(w.m2(), sizeM2)).isPresent()
        && other.wireAtMost().filter(w -> sizeM2 <= WireSizes.snapped(w.m2(), sizeM2)).isPresent();
  }

  private void askMetal(CircuitCase circuit, Grounding grounding) {
    if (grounding.metal().isEmpty()) {
      String what = "the metal of the grounding conductor";
      missing(LugMetal.class, circuit.lacks(what, "grounding", "metal"));
    } else if (part.isEmpty() || isLost("takes")) {
      missing(LugMetal.class, lacks("the metals that lug " + lug + " takes", "takes"));
    } else {
      Choice<ConductorMetal> metal = grounding.metal().get();
      add(
          new LugMetal(
              subject().part("circuit " + circuit.name()),
              lug.at(),
              Unit.NUMBER,
              lug.value(),
              circuit.name().value(),
              metal.toString(),
              takes(part.get(), metal.value()),
              fitting("the metal of the conductor", other -> takes(other, metal.value()))));
    }
  }

  /** A lug that says nothing is made for copper. */
  private static boolean takes(BondingPart part, ConductorMetal metal) {
    return part.takes().isEmpty()
        ? metal == ConductorMetal.COPPER
        : part.takes().stream().anyMatch(own -> own.value() == metal);
  }

  /** Lugs that have a property and are not known to lack another one that all lugs need. */
  private Optional<String> fitting(String property, Predicate<BondingPart> wanted) {
    List<Need<BondingPart>> needs =
        List.of(
            new Need<>(property, wanted),
            new Need<>("bonding", p -> p.bonding().map(Flag::value).orElse(true)),
            new Need<>(WET, p -> p.wetRated().map(Flag::value).orElse(true)),
            new Need<>(FINISH, p -> p.finish().filter(LugQuestions::isBareCopper).isEmpty()));
    Fits fits = Fits.of(wiring.catalogue().parts().lugs(), needs, lug -> 0);
    return Optional.of(fits.without(lug.value()).told("another lug"));
  }

  private boolean isLost(String key) {
    return wiring.unreadable().touches("parts", "lugs", lug.value(), key);
  }

  private String lacks(String what, String key) {
    return wiring.unreadable().missing(what, "parts", "lugs", lug.value(), key);
  }

  private void add(Fact fact) {
    wiring.answers().add(fact);
  }

  private void missing(Class<? extends Fact> type, String reason) {
    wiring.missing(type, subject(), reason, lug.at());
  }
}
