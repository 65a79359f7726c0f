package clampwise.gate;

import clampwise.facts.Facts;
import clampwise.finding.Accepted;
import clampwise.finding.Comparison;
import clampwise.finding.Finding;
import clampwise.finding.FindingName;
import clampwise.review.Review;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What became of a job from one revision to another.
 *
 * @param fresh findings that were not there before
 * @param gone findings that are not there any more
 * @param unknown findings that were there before and can not be judged now; not the same as gone
 * @param worse findings further from their limit, or at more places, than before
 * @param better findings nearer to their limit, or at fewer places, than before
 * @param unchanged how many findings are as they were
 * @param layout what changed in the layout, in words
 */
public record Changes(
    List<Changed> fresh,
    List<Changed> gone,
    List<Changed> unknown,
    List<Changed> worse,
    List<Changed> better,
    int unchanged,
    List<String> layout) {

  /** Numbers closer than this share of them are the same. */
  private static final double SAME = 1e-6;

  /**
   * A finding of which something changed.
   *
   * @param finding as it is, or as it was if it is gone
   * @param before as it was, if it was there
   * @param accepted whether somebody answers for it
   */
  public record Changed(Finding finding, Optional<Finding> before, boolean accepted) {}

  /** What became of a job. */
  public static Changes of(Review before, Review after) {
    return new Comparing(before, after).changes();
  }

  private static final class Comparing {

    private final Review after;
    private final Map<FindingName, Changed> old;
    private final Map<FindingName, Changed> now;
    private final List<String> layout;
    private final List<Changed> fresh = new ArrayList<>();
    private final List<Changed> worse = new ArrayList<>();
    private final List<Changed> better = new ArrayList<>();
    private int unchanged;

    Comparing(Review before, Review after) {
      this.after = after;
      this.old = all(before);
      this.now = all(after);
      Optional<Facts> was = before.facts();
      Optional<Facts> is = after.facts();
      this.layout =
          was.isPresent() && is.isPresent()
              ? LayoutChanges.of(was.get().layout(), is.get().layout())
              : List.of();
    }

    /** Open findings first, then those that somebody answers for. */
    private static Map<FindingName, Changed> all(Review review) {
      Map<FindingName, Changed> all = new LinkedHashMap<>();
      review.findings().forEach(one -> all.put(one.name(), changed(one, false)));
      for (Accepted one : review.accepted()) {
        all.put(one.finding().name(), changed(one.finding(), true));
      }
      return all;
    }

    private static Changed changed(Finding finding, boolean accepted) {
      return new Changed(finding, Optional.empty(), accepted);
    }

    Changes changes() {
      now.values().forEach(this::sort);
      List<Changed> gone = new ArrayList<>();
      List<Changed> unknown = new ArrayList<>();
      old.forEach(
          (name, was) -> {
            if (!now.containsKey(name)) {
              (Gaps.wouldShow(name, after) ? gone : unknown).add(was);
            }
          });
      return new Changes(fresh, gone, unknown, worse, better, unchanged, layout);
    }

    private void sort(Changed one) {
      Changed was = old.get(one.finding().name());
      if (was == null) {
        fresh.add(one);
        return;
      }
      Changed both = new Changed(one.finding(), Optional.of(was.finding()), one.accepted());
      int way = way(was.finding(), one.finding());
      if (way > 0) {
        worse.add(both);
      } else if (way < 0) {
        better.add(both);
      } else {
        unchanged++;
      }
    }
  }

  /** More than nought where a finding got worse; its number counts before its places. */
  private static int way(Finding before, Finding after) {
    int severity = before.severity().compareTo(after.severity());
    if (severity != 0) {
      return severity;
    }
    if (before.comparison().isPresent() && after.comparison().isPresent()) {
      int number = way(before.comparison().get(), after.comparison().get());
      if (number != 0) {
        return number;
      }
    }
    return Integer.compare(after.places().size(), before.places().size());
  }

  private static int way(Comparison before, Comparison after) {
    double was = Math.abs(before.measuredSi() - before.limitSi());
    double is = Math.abs(after.measuredSi() - after.limitSi());
    return Math.abs(is - was) <= SAME * Math.max(is, was) ? 0 : Double.compare(is, was);
  }
}
