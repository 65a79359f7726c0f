package clampwise.facts.roof;

import clampwise.catalogue.Limits;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Grip;
import clampwise.facts.layout.PlacedModule;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** Finds neighbouring attachments of a field, along its lines and along its seams. */
public final class Stretches {

  private final Limits limits;
  private final double widestGapM;
  private final Map<Integer, Set<Integer>> rowsByColumn = new HashMap<>();
  private final List<Attachment> attachments;

  /** The stretches of a field. */
  public Stretches(FieldLayout field, Limits limits) {
    this.limits = limits;
    widestGapM = limits.get("neighbouring-column-gap-most").si();
    attachments = field.attachments().stream().filter(each -> each.line() > 0).toList();
    for (PlacedModule module : field.modules()) {
      rowsByColumn.computeIfAbsent(module.column(), c -> new HashSet<>()).add(module.row());
    }
  }

  /** Neighbours on a line that hold one module, or two modules side by side. */
  public List<Stretch> alongLines() {
    List<Stretch> found = new ArrayList<>();
    for (int n = 1; n < attachments.size(); n++) {
      Stretch stretch = Stretch.of(attachments.get(n - 1), attachments.get(n), limits);
      if (stretch.from().line() == stretch.to().line() && isUnbroken(stretch)) {
        found.add(stretch);
      }
    }
    return found;
  }

  /** Neighbours on a seam with an unbroken column of modules between them. */
  List<Stretch> alongSeams() {
    Map<Integer, List<Attachment>> bySeam = new TreeMap<>();
    for (Attachment each : attachments) {
      each.seam()
          .ifPresent(
              seam -> bySeam.computeIfAbsent(seam.number(), s -> new ArrayList<>()).add(each));
    }
    return bySeam.values().stream().flatMap(list -> pairs(list).stream()).toList();
  }

  private List<Stretch> pairs(List<Attachment> onSeam) {
    onSeam.sort(Comparator.comparingDouble(Attachment::upM));
    return IntStream.range(1, onSeam.size())
        .mapToObj(n -> Stretch.of(onSeam.get(n - 1), onSeam.get(n), limits))
        .filter(this::hasColumnBetween)
        .toList();
  }

  private boolean isUnbroken(Stretch stretch) {
    return stretch.from().grips().stream()
        .anyMatch(left -> stretch.to().grips().stream().anyMatch(right -> isBeside(left, right)));
  }

  private boolean isBeside(Grip left, Grip right) {
    return left.edge() == right.edge()
        && right.module().leftM() - left.module().rightM() <= widestGapM;
  }

  private boolean hasColumnBetween(Stretch stretch) {
    return stretch.from().grips().stream()
        .filter(grip -> grip.edge() == Grip.Edge.LOWER)
        .anyMatch(
            lowest ->
                stretch.to().grips().stream()
                    .filter(grip -> grip.edge() == Grip.Edge.UPPER)
                    .anyMatch(highest -> isColumn(lowest.module(), highest.module())));
  }

  private boolean isColumn(PlacedModule lowest, PlacedModule highest) {
    return lowest.column() == highest.column()
        && IntStream.rangeClosed(lowest.row(), highest.row())
            .allMatch(rowsByColumn.getOrDefault(lowest.column(), Set.of())::contains);
  }
}
