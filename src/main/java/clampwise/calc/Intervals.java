package clampwise.calc;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A set of lengths made of closed intervals, in order and apart from each other.
 *
 * @param parts its intervals, from low to high
 */
public record Intervals(List<Interval> parts) {

  private static final Comparator<Interval> FROM = Comparator.comparingDouble(Interval::fromM);

  public static final Intervals NONE = new Intervals(List.of());

  public Intervals {
    parts = merged(parts);
  }

  public static Intervals of(double fromM, double toM) {
    return new Intervals(List.of(new Interval(fromM, toM)));
  }

  public boolean isEmpty() {
    return parts.isEmpty();
  }

  public boolean contains(double m) {
    return parts.stream().anyMatch(part -> part.contains(m));
  }

  /** The longest interval, the lowest one of several. */
  public Optional<Interval> widest() {
    return parts.stream().reduce((a, b) -> Snap.m(b.lengthM()) > Snap.m(a.lengthM()) ? b : a);
  }

  public Intervals union(Intervals other) {
    List<Interval> all = new ArrayList<>(parts);
    all.addAll(other.parts);
    return new Intervals(all);
  }

  public Intervals intersection(Intervals other) {
    List<Interval> common = new ArrayList<>();
    int i = 0;
    int j = 0;
    while (i < parts.size() && j < other.parts.size()) {
      common.add(parts.get(i).and(other.parts.get(j)));
      boolean endsFirst = parts.get(i).toM() < other.parts.get(j).toM();
      i += endsFirst ? 1 : 0;
      j += endsFirst ? 0 : 1;
    }
    return new Intervals(common);
  }

  public Intervals shifted(double byM) {
    return new Intervals(parts.stream().map(part -> part.shifted(byM)).toList());
  }

  private static List<Interval> merged(List<Interval> any) {
    List<Interval> sorted = any.stream().filter(i -> !i.isEmpty()).sorted(FROM).toList();
    List<Interval> merged = new ArrayList<>(sorted.size());
    for (Interval next : sorted) {
      int last = merged.size() - 1;
      if (last >= 0 && next.fromM() <= merged.get(last).toM()) {
        Interval before = merged.get(last);
        merged.set(last, new Interval(before.fromM(), Math.max(before.toM(), next.toM())));
      } else {
        merged.add(next);
      }
    }
    return List.copyOf(merged);
  }
}
