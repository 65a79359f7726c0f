package clampwise.policy;

import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.catalogue.LimitsReader;
import clampwise.job.Named;
import clampwise.source.Nearest;
import clampwise.source.Problem;
import clampwise.source.Problems;
import clampwise.units.Parsed;
import clampwise.units.QuantityPrint;
import clampwise.units.QuantityText;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Limits that a house sets in place of shipped ones, stricter or looser.
 *
 * @param byKey the limits as facts carry them, by the name of the limit they replace
 * @param replaced the shipped limits in whose place they stand, by name
 */
public record HouseLimits(Map<String, Limit> byKey, Map<String, Limit> replaced) {

  static final HouseLimits NONE = new HouseLimits(Map.of(), Map.of());

  /** Key of house limits among the references. */
  private static final String DOCUMENT = "house-limit";

  /** The limits of a policy; each that has no shipped limit of its name is a problem. */
  static HouseLimits of(Named<PolicyFile.HouseLimit> written, Problems problems) {
    if (written.isEmpty()) {
      return NONE;
    }
    Map<String, Limit> shipped = shipped();
    Map<String, Limit> house = new HashMap<>();
    for (Named.Item<PolicyFile.HouseLimit> item : written.all()) {
      String key = item.name().value();
      Optional<Limit> known = Optional.ofNullable(shipped.get(key));
      if (known.isPresent()) {
        limit(item, known.get(), problems).ifPresent(limit -> house.put(key, limit));
      } else {
        String found = "the unknown limit \"" + key + "\"";
        Optional<String> nearest = Nearest.to(key, shipped.keySet());
        String expected = "the name of a limit; clampwise policy --limits lists them";
        problems.add(new Problem(item.name().at(), found, expected, nearest));
      }
    }
    shipped.keySet().retainAll(house.keySet());
    return new HouseLimits(Map.copyOf(house), Map.copyOf(shipped));
  }

  /** Every limit that a house may replace, by name. */
  public static Map<String, Limit> shipped() {
    Map<String, Limit> all = new LinkedHashMap<>(LimitsReader.read().byKey());
    LimitsReader.fire().byKey().forEach(all::putIfAbsent);
    LimitsReader.takeoff().byKey().forEach(all::putIfAbsent);
    return all;
  }

  private static Optional<Limit> limit(
      Named.Item<PolicyFile.HouseLimit> item, Limit shipped, Problems problems) {
    PolicyFile.HouseLimit written = item.value();
    Parsed parsed =
        QuantityText.parse(written.value().value(), shipped.unit().dimension(), Optional.empty());
    if (parsed instanceof Parsed.Fault fault) {
      problems.add(Problem.of(written.value().at(), fault.found(), fault.expected()));
      return Optional.empty();
    }
    Parsed.Value value = (Parsed.Value) parsed;
    if (!Double.isFinite(value.si()) || value.si() < 0) {
      String found = "a limit that no job can be held against";
      problems.add(Problem.of(written.value().at(), found, "a limit of nought or more"));
      return Optional.empty();
    }
    return Optional.of(house(written, value, shipped));
  }

  private static Limit house(PolicyFile.HouseLimit written, Parsed.Value value, Limit shipped) {
    return new Limit(
        shipped.key(),
        value.si(),
        value.unit(),
        DOCUMENT,
        "",
        written.value().at() + ": " + written.reason().value(),
        "in place of " + QuantityPrint.text(shipped.si(), shipped.unit()) + from(shipped),
        shipped.validity());
  }

  private static String from(Limit shipped) {
    if (shipped.clause().isEmpty()) {
      return ", " + shipped.obtained();
    }
    String document = shipped.document().toUpperCase(Locale.ROOT);
    return " of " + document + " " + shipped.clause() + " (" + shipped.obtained() + ")";
  }

  /** Whether every shipped limit holds. */
  public boolean isEmpty() {
    return byKey.isEmpty();
  }

  /** Shipped limits with those of the house in their place. */
  public Limits over(Limits shipped) {
    if (byKey.isEmpty()) {
      return shipped;
    }
    Map<String, Limit> all = new LinkedHashMap<>(shipped.byKey());
    List<String> replaced = new ArrayList<>(byKey.keySet());
    replaced.retainAll(shipped.byKey().keySet());
    for (String key : replaced) {
      all.put(key, java.util.Objects.requireNonNull(byKey.get(key)));
    }
    return new Limits(all);
  }
}
