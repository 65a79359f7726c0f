package clampwise.gate;

import clampwise.catalogue.LimitsReader;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlacedModule;
import clampwise.finding.NaturalOrder;
import clampwise.takeoff.Part;
import clampwise.takeoff.PartLine;
import clampwise.takeoff.Quantities;
import clampwise.units.QuantityPrint;
import clampwise.units.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/** What changed in a layout, in the words of the trade. */
final class LayoutChanges {

  /** Coordinates are compared to this [m]; a drawing is read no closer. */
  private static final double CLOSE_M = 1e-4;

  private static final int FEW = 4;

  private final List<String> changes = new ArrayList<>();
  private final Layout before;
  private final Layout after;
  private final Quantities now;

  private LayoutChanges(Layout before, Layout after) {
    this.before = before;
    this.after = after;
    this.now = quantities(after);
  }

  /** One line for each change. */
  static List<String> of(Layout before, Layout after) {
    LayoutChanges changes = new LayoutChanges(before, after);
    changes.site();
    changes.fields();
    changes.parts();
    return List.copyOf(changes.changes);
  }

  private static Quantities quantities(Layout layout) {
    return Quantities.of(layout, LimitsReader.read(), Optional.empty());
  }

  private void site() {
    SiteValues was = SiteValues.of(before.job());
    SiteValues is = SiteValues.of(after.job());
    changes.addAll(was.changesTo(is));
  }

  private void fields() {
    Map<String, FieldLayout> was = byName(before);
    Map<String, FieldLayout> is = byName(after);
    TreeSet<String> names = new TreeSet<>(NaturalOrder::compare);
    names.addAll(was.keySet());
    names.addAll(is.keySet());
    for (String name : names) {
      FieldLayout old = was.get(name);
      FieldLayout fresh = is.get(name);
      if (old != null && fresh != null) {
        field(old, fresh);
      } else if (old != null) {
        changes.add("field " + name + " is gone (" + modules(old) + ")");
      } else if (fresh != null) {
        changes.add("field " + name + " is new (" + modules(fresh) + ")");
      }
    }
  }

  private static Map<String, FieldLayout> byName(Layout layout) {
    Map<String, FieldLayout> byName = new HashMap<>();
    layout.fields().forEach(field -> byName.put(field.name(), field));
    return byName;
  }

  private static String modules(FieldLayout field) {
    return counted(field.modules().size(), "module");
  }

  private void field(FieldLayout was, FieldLayout is) {
    Map<String, PlacedModule> old = new LinkedHashMap<>();
    was.modules().forEach(module -> old.put(module.name(), module));
    List<String> added = new ArrayList<>();
    Map<String, List<String>> moved = new LinkedHashMap<>();
    for (PlacedModule module : is.modules()) {
      PlacedModule place = old.remove(module.name());
      if (place == null) {
        added.add(module.name());
      } else {
        moved(place, module)
            .ifPresent(
                how -> moved.computeIfAbsent(how, h -> new ArrayList<>()).add(module.name()));
      }
    }
    name(added, "new in field " + is.name());
    name(new ArrayList<>(old.keySet()), "gone from field " + is.name());
    moved.forEach((how, names) -> name(names, how));
    attachments(was, is);
  }

  private void name(List<String> names, String what) {
    if (!names.isEmpty()) {
      String some = String.join(", ", names.subList(0, Math.min(FEW, names.size())));
      String more = names.size() > FEW ? " and " + (names.size() - FEW) + " more" : "";
      changes.add(counted(names.size(), "module") + " " + what + ": " + some + more);
    }
  }

  private Optional<String> moved(PlacedModule was, PlacedModule is) {
    String along = shift(is.leftM() - was.leftM(), "right", "left");
    String up = shift(is.bottomM() - was.bottomM(), "up the slope", "down the slope");
    if (along.isEmpty() && up.isEmpty()) {
      return was.typeName().equals(is.typeName()) && was.orientation() == is.orientation()
          ? Optional.empty()
          : Optional.of("changed from " + type(was) + " to " + type(is));
    }
    String and = along.isEmpty() || up.isEmpty() ? "" : " and ";
    return Optional.of("moved " + along + and + up);
  }

  private static String type(PlacedModule module) {
    return module.typeName() + " " + module.orientation().name().toLowerCase(java.util.Locale.ROOT);
  }

  private String shift(double byM, String forward, String back) {
    return Math.abs(byM) < CLOSE_M ? "" : length(Math.abs(byM)) + " " + (byM > 0 ? forward : back);
  }

  private String length(double m) {
    return QuantityPrint.text(m, now.imperial() ? Unit.INCH : Unit.MILLIMETRE);
  }

  private void attachments(FieldLayout was, FieldLayout is) {
    Spacing old = Spacing.of(was.attachments());
    Spacing fresh = Spacing.of(is.attachments());
    if (Math.abs(old.usualM() - fresh.usualM()) >= CLOSE_M) {
      changes.add(
          "field "
              + is.name()
              + ": usual spacing of attachments along a line "
              + length(old.usualM())
              + " -> "
              + length(fresh.usualM()));
    }
    long elsewhere = is.attachments().stream().filter(one -> !hasOne(was, one)).count();
    boolean sameCount = was.attachments().size() == is.attachments().size();
    if (sameCount && elsewhere > 0) {
      changes.add(
          "field "
              + is.name()
              + ": "
              + counted((int) elsewhere, "attachment")
              + " of "
              + is.attachments().size()
              + " not where one was");
    }
  }

  private static boolean hasOne(FieldLayout field, Attachment at) {
    return field.attachments().stream()
        .anyMatch(
            one ->
                Math.abs(one.alongM() - at.alongM()) < CLOSE_M
                    && Math.abs(one.upM() - at.upM()) < CLOSE_M);
  }

  private void parts() {
    Map<Part, Integer> counts = new TreeMap<>();
    for (PartLine line : quantities(before).lines()) {
      counts.merge(line.part(), -line.count(), Integer::sum);
    }
    Map<Part, Integer> is = new HashMap<>();
    for (PartLine line : now.lines()) {
      is.put(line.part(), line.count());
      counts.merge(line.part(), line.count(), Integer::sum);
    }
    counts.forEach(
        (part, by) -> {
          int count = is.getOrDefault(part, 0);
          if (by != 0) {
            String sign = by > 0 ? "+" : "";
            changes.add(part + ": " + (count - by) + " -> " + count + " (" + sign + by + ")");
          }
        });
  }

  private static String counted(int count, String word) {
    return count + " " + word + (count == 1 ? "" : "s");
  }
}
