package clampwise.report;

import clampwise.finding.NaturalOrder;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/** Names many places in few words: {@code fields.A / module R1C2, R2C1-R2C9}. */
final class PlaceNames {

  /** Names and ranges of names before the rest is only counted. */
  private static final int MOST = 30;

  private static final String PART = " / ";

  /** Places that are named alike but for a number or their last word. */
  private record Kindred(
      String before, String after, Map<String, TreeSet<Integer>> runs, List<String> words) {

    static Kindred of(String before, String after) {
      return new Kindred(before, after, new TreeMap<>(NaturalOrder::compare), new ArrayList<>());
    }
  }

  private final Map<String, Kindred> kindred = new LinkedHashMap<>();

  private PlaceNames() {}

  /** One line for places that are named alike. */
  static List<String> lines(Collection<String> paths) {
    PlaceNames names = new PlaceNames();
    paths.forEach(names::add);
    return names.lines();
  }

  private void add(String path) {
    int end = endOfNumber(path);
    int start = NameRun.startOfNumber(path, end);
    if (start == end) {
      int tail = path.lastIndexOf(PART);
      String before = tail < 0 ? "" : path.substring(0, tail + PART.length());
      kindred(before, "").words.add(path.substring(before.length()));
    } else {
      int word = path.lastIndexOf(' ', start) + 1;
      kindred(path.substring(0, word), path.substring(end))
          .runs
          .computeIfAbsent(path.substring(word, start), unseen -> new TreeSet<>())
          .add(Integer.valueOf(path.substring(start, end)));
    }
  }

  private Kindred kindred(String before, String after) {
    return kindred.computeIfAbsent(before + "\n" + after, unseen -> Kindred.of(before, after));
  }

  private static int endOfNumber(String path) {
    int end = path.length();
    while (end > 0 && !Character.isDigit(path.charAt(end - 1))) {
      end--;
    }
    return end;
  }

  private List<String> lines() {
    List<String> lines = new ArrayList<>();
    int left = MOST;
    int cut = 0;
    for (Kindred one : kindred.values()) {
      List<String> shown = new ArrayList<>();
      for (NameRun.Word word : words(one)) {
        boolean fits = left-- > 0;
        cut += fits ? 0 : word.count();
        if (fits) {
          shown.add(word.text());
        }
      }
      if (!shown.isEmpty()) {
        lines.add(one.before + String.join(", ", shown) + one.after);
      }
    }
    if (cut > 0) {
      lines.add("and " + cut + " more");
    }
    return lines;
  }

  private static List<NameRun.Word> words(Kindred one) {
    List<NameRun.Word> words = new ArrayList<>();
    one.words.forEach(text -> words.add(new NameRun.Word(text, 1)));
    runs(one).forEach(run -> words.addAll(run.words()));
    return words;
  }

  private static List<NameRun> runs(Kindred one) {
    List<NameRun> runs = new ArrayList<>();
    one.runs.forEach(
        (stem, numbers) -> {
          NameRun next = NameRun.of(stem, numbers);
          int last = runs.size() - 1;
          if (last >= 0 && runs.get(last).goesOnWith(next)) {
            runs.set(last, runs.get(last).with(next));
          } else {
            runs.add(next);
          }
        });
    return runs;
  }
}
