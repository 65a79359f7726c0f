package clampwise.facts.takeoff;

import clampwise.calc.takeoff.WholeNumbers;
import clampwise.catalogue.Limit;
import clampwise.facts.bonding.Lacking;
import clampwise.facts.layout.StandIns;
import clampwise.finding.Subject;
import clampwise.job.Bonding;
import clampwise.job.Count;
import clampwise.job.Named;
import clampwise.source.Span;
import clampwise.takeoff.Part;
import clampwise.takeoff.PartKind;
import clampwise.takeoff.PartKinds;
import clampwise.units.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Holds the parts on the list of the order against those on the drawing. */
final class PartsLists {

  private static final Subject LIST = TakeoffAsked.TAKEOFF.part("parts list");

  private final TakeoffAsked asked;
  private final Named<Count> list;
  private final Limit fewestSpares;
  private final Limit mostSpares;
  private final StandIns standIns;

  private PartsLists(TakeoffAsked asked) {
    this.asked = asked;
    this.list = asked.takeoff().partsList();
    this.fewestSpares = asked.rules().get("spares-least");
    this.mostSpares = asked.rules().get("spares-most");
    this.standIns = StandIns.of(asked.layout(), drawn(), listed());
  }

  private Map<String, PartKind> drawn() {
    Map<String, PartKind> kinds = new TreeMap<>();
    for (Part drawn : asked.counts().parts().keySet()) {
      kinds.put(drawn.name(), drawn.kind());
    }
    return kinds;
  }

  private Map<String, PartKind> listed() {
    Map<String, PartKind> kinds = new TreeMap<>();
    PartKinds known = PartKinds.of(asked.layout());
    for (String listed : list.names()) {
      known.of(listed).ifPresent(kind -> kinds.put(listed, kind));
    }
    return kinds;
  }

  static void ask(TakeoffAsked asked) {
    if (asked.isLost("parts-list")) {
      asked.missing(OrderedPart.class, LIST, "the parts list could not be read");
    } else if (asked.takeoff().partsList().isEmpty()) {
      asked.missing(OrderedPart.class, LIST, "no parts list is given (takeoff: parts-list)");
    } else {
      new PartsLists(asked).ask();
    }
  }

  private void ask() {
    Map<String, PartKind> kinds = new TreeMap<>(listed());
    kinds.putAll(drawn());
    kinds.forEach(this::ask);
  }

  private void ask(String name, PartKind kind) {
    if (name.isEmpty()) {
      String reason =
          "no part is named for some " + kind.word() + "s of the drawing (" + key(kind) + ")";
      asked.missing(OrderedPart.class, LIST.part(kind.word()), reason);
      return;
    }
    Optional<String> unknown = asked.counts().unknown(kind);
    if (unknown.isPresent()) {
      asked.missing(OrderedPart.class, LIST.part(name), unknown.get(), at(name));
    } else {
      asked.answers().add(fact(name, kind));
    }
  }

  /** The key of the job that names the part. */
  private static String key(PartKind kind) {
    return switch (kind) {
      case MODULE -> "fields: module";
      case SEAM_CLAMP, RIB_BRACKET, ATTACHMENT -> "fields: attachment";
      case MID_CLAMP -> "fields: mid-clamp";
      case END_CLAMP -> "fields: end-clamp";
      case JUMPER -> "bonding: jumper";
      case LUG -> "bonding: lug";
      case WIRE_CLIP -> "electrical: cables: clip";
    };
  }

  private OrderedPart fact(String name, PartKind kind) {
    int drawn = drawn(name);
    int listed = list.find(name).map(Count::value).orElse(0);
    boolean spared = kind != PartKind.MODULE;
    int least = drawn + (spared ? WholeNumbers.spares(drawn, fewestSpares.si()) : 0);
    int most = drawn + WholeNumbers.spares(drawn, mostSpares.si());
    return new OrderedPart(
        LIST.part(name),
        at(name),
        Unit.NUMBER,
        kind.word() + " " + name,
        listed,
        drawn,
        Math.max(0, drawn - listed),
        least,
        most,
        standIns.listed(name),
        standIns.inPlace(name),
        drawnAt(name, kind, listed, most),
        instead(drawn, least, most),
        Optional.of(listed > drawn && listed < least ? fewestSpares : mostSpares));
  }

  /** Where jumpers and lugs would go that are listed and that the ground paths lack. */
  private List<Span> drawnAt(String name, PartKind kind, int listed, int most) {
    boolean bonds = kind == PartKind.JUMPER || kind == PartKind.LUG;
    Optional<Bonding> bonding = asked.layout().job().bonding();
    if (!bonds || listed <= most || bonding.isEmpty()) {
      return standIns.drawnAt(name);
    }
    Lacking lacking = Lacking.of(asked.layout(), bonding.get());
    List<Span> places = kind == PartKind.JUMPER ? lacking.jumpers() : lacking.lugs();
    int needed = drawn(name) + places.size();
    return listed <= needed + WholeNumbers.spares(needed, mostSpares.si()) ? places : List.of();
  }

  private static String instead(int drawn, int least, int most) {
    return drawn == 0
        ? "leave it out, or draw what it is for"
        : "order " + least + (least < most ? " to " + most : "") + ", or draw what the rest is for";
  }

  private int drawn(String name) {
    return asked.counts().parts().entrySet().stream()
        .filter(entry -> entry.getKey().name().equals(name))
        .mapToInt(Map.Entry::getValue)
        .sum();
  }

  /** What is not on the list would have to be added to it. */
  private Span at(String name) {
    return list.find(name)
        .or(() -> standIns.of(name).flatMap(list::find))
        .map(Count::at)
        .or(() -> list.all().stream().findFirst().map(item -> item.name().at()))
        .orElseGet(asked::at);
  }
}
