package clampwise.facts.install;

import clampwise.calc.accuracy.InOrder;
import clampwise.calc.trail.Table;
import clampwise.catalogue.Limit;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.LineWord;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.InstallStep;
import clampwise.units.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Asks whether the steps of the work are all there, in the order the attachment asks for. */
record StepQuestions(SiteWork work, Table table, List<Choice<InstallStep>> written) {

  private static final Subject STEPS = SiteWork.INSTALL.part("steps");

  static void ask(SiteWork work) {
    Optional<List<Choice<InstallStep>>> written = work.install().steps();
    Set<String> attachments = attachments(work.layout().planes());
    if (written.isEmpty() || work.isLost("steps")) {
      String reason = work.lacks("the steps of the work", "steps");
      work.missing(StepTaken.class, STEPS, reason);
      work.missing(StepOrder.class, STEPS, reason);
      return;
    }
    StepQuestions steps = new StepQuestions(work, work.tables().get("steps"), written.get());
    attachments.forEach(steps::judge);
  }

  /** What sits on seams is a seam clamp, what sits on ribs or crests a bracket. */
  private static Set<String> attachments(List<PlaneLayout> planes) {
    Set<String> kinds = new LinkedHashSet<>();
    for (PlaneLayout plane : planes) {
      for (FieldLayout field : plane.fields()) {
        if (plane.panel().isPresent() && !field.modules().isEmpty()) {
          LineWord line = LineWord.of(plane.panel());
          kinds.add(line == LineWord.SEAM ? "seam-clamp" : line.one() + "-bracket");
        }
      }
    }
    return kinds;
  }

  private void judge(String attachment) {
    Map<String, Table.Row> rows = new LinkedHashMap<>();
    for (Table.Row row : table.rows()) {
      if (row.word("attachment").equals(attachment)) {
        rows.put(row.word("step"), row);
      }
    }
    Map<String, Choice<InstallStep>> listed = new LinkedHashMap<>();
    for (Choice<InstallStep> step : written) {
      if (rows.containsKey(step.toString())) {
        listed.putIfAbsent(step.toString(), step);
      }
    }
    rows.forEach((step, row) -> work.answers().add(taken(row, listed.containsKey(step))));
    order(new ArrayList<>(listed.values()), new ArrayList<>(rows.values()));
  }

  private StepTaken taken(Table.Row row, boolean listed) {
    String attachment = words(row);
    return new StepTaken(
        STEPS.part(attachment).part(row.word("step")),
        written.isEmpty()
            ? work.layout().job().at("install", "steps")
            : written.get(written.size() - 1).at(),
        Unit.NUMBER,
        attachment,
        row.word("words"),
        listed,
        from(table, row));
  }

  private void order(List<Choice<InstallStep>> listed, List<Table.Row> rows) {
    int[] places = listed.stream().mapToInt(step -> place(step, rows)).toArray();
    boolean[] stays = InOrder.rising(places);
    for (int i = 0; i < places.length; i++) {
      Table.Row row = rows.get(places[i]);
      work.answers()
          .add(
              new StepOrder(
                  STEPS.part(words(row)).part(row.word("step") + " in order"),
                  listed.get(i).at(),
                  Unit.NUMBER,
                  words(row),
                  row.word("words"),
                  stays[i],
                  where(places, i, rows),
                  from(table, row)));
    }
  }

  private static int place(Choice<InstallStep> step, List<Table.Row> rows) {
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i).word("step").equals(step.toString())) {
        return i;
      }
    }
    throw new IllegalStateException("no row for step " + step);
  }

  /** Behind the last of the listed steps that come before it, else at the beginning. */
  private static String where(int[] places, int step, List<Table.Row> rows) {
    int before = -1;
    for (int place : places) {
      before = place < places[step] ? Math.max(before, place) : before;
    }
    return before < 0 ? "to the beginning" : "behind \"" + rows.get(before).word("words") + "\"";
  }

  private static String words(Table.Row row) {
    return row.word("attachment").replace('-', ' ') + "s";
  }

  /** Where a row of a table comes from. */
  static Optional<Limit> from(Table table, Table.Row row) {
    return Optional.of(
        new Limit(
            table.key(),
            1,
            Unit.NUMBER,
            table.source().document(),
            table.source().edition(),
            table.source().clause(),
            row.words().getOrDefault("obtained", table.source().obtained()),
            table.source().validity()));
  }
}
