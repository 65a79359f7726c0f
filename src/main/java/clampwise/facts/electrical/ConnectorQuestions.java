package clampwise.facts.electrical;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.job.Electrical.Connectors;
import clampwise.job.Electrical.Place;
import clampwise.job.ModuleElectrics;
import clampwise.job.Text;
import clampwise.units.Unit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Asks of connectors whether they belong together, and where they lie. */
record ConnectorQuestions(Wiring wiring, Connectors connectors) {

  private static final Subject CONNECTORS = Wiring.ELECTRICAL.part("connectors");

  static void ask(Wiring wiring) {
    Optional<Connectors> connectors = wiring.electrical().connectors();
    if (connectors.isEmpty()) {
      String reason = wiring.lacks("what connectors there are", "connectors");
      wiring.missing(ConnectorPair.class, CONNECTORS, reason);
    } else {
      ConnectorQuestions questions = new ConnectorQuestions(wiring, connectors.get());
      questions.askPairs();
      questions.askPlace();
    }
  }

  private void askPairs() {
    Map<String, ColdCase> byModule = new LinkedHashMap<>();
    wiring.electrical().strings().all().stream()
        .map(item -> ColdCase.of(wiring, item))
        .forEach(string -> byModule.putIfAbsent(string.moduleName().orElse(""), string));
    byModule.values().forEach(this::askPairs);
  }

  private void askPairs(ColdCase string) {
    ask(string, connectors.madeOnSite(), "made-on-site", "made on site");
    ask(string, connectors.equipment(), "equipment", "of the equipment");
  }

  private void ask(ColdCase string, Optional<Text> other, String key, String where) {
    Optional<Text> own = string.electrics().flatMap(ModuleElectrics::connector);
    if (own.isEmpty()) {
      missing(ConnectorPair.class, string.lacks("the connector", "connector"));
    } else if (other.isEmpty()) {
      String what = "the type of the connectors " + where;
      missing(ConnectorPair.class, wiring.lacks(what, "connectors", key));
    } else {
      wiring.answers().add(pair(string, own.get(), other.get(), where));
    }
  }

  private static ConnectorPair pair(ColdCase string, Text own, Text other, String where) {
    return new ConnectorPair(
        CONNECTORS.part(where),
        other.at(),
        Unit.NUMBER,
        string.moduleName().orElse(""),
        own.value(),
        other.value(),
        where,
        own.value().strip().equalsIgnoreCase(other.value().strip()));
  }

  private void askPlace() {
    connectors
        .lie()
        .ifPresentOrElse(
            place ->
                wiring
                    .answers()
                    .add(
                        new ConnectorPlace(
                            CONNECTORS,
                            place.at(),
                            Unit.NUMBER,
                            place.value() == Place.IN_PAN ? "in the pan" : "on the roof",
                            place.value() == Place.OFF_ROOF)),
            () ->
                missing(
                    ConnectorPlace.class,
                    wiring.lacks("where connectors lie", "connectors", "lie")));
  }

  private void missing(Class<? extends Fact> type, String reason) {
    wiring.missing(type, CONNECTORS, reason);
  }
}
