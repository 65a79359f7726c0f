package clampwise.report;

import static clampwise.report.TakeoffFigures.each;
import static clampwise.report.TakeoffFigures.hours;
import static clampwise.report.TakeoffFigures.number;
import static clampwise.report.TakeoffFigures.range;
import static clampwise.report.TakeoffFigures.share;

import clampwise.catalogue.Limit;
import clampwise.review.Cautions;
import clampwise.review.TakenOff;
import clampwise.takeoff.Comparison;
import clampwise.takeoff.Crew;
import clampwise.takeoff.Freight;
import clampwise.takeoff.NotCounted;
import clampwise.takeoff.PartKind;
import clampwise.takeoff.PartLine;
import clampwise.takeoff.Quantities;
import clampwise.takeoff.Run;
import clampwise.takeoff.Side;
import clampwise.takeoff.Task;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** Take-offs as text. */
public final class TakeoffText {

  private static final int INDENT = 2;

  private final Sheet sheet;

  /** Take-offs onto a page. */
  public TakeoffText(Sheet sheet) {
    this.sheet = sheet;
  }

  /** The take-off of one job. */
  public void write(TakenOff job) {
    if (job.quantities().isPresent()) {
      sheet.gap();
      String title = job.title().isBlank() ? "a job without a name" : job.title();
      sheet.prose(0, Role.HEADING, "Take-off of " + title);
      sheet.whole(0, Role.PLACE, job.file());
    }
    ProblemList.write(job.problems(), sheet);
    job.quantities().ifPresent(this::write);
  }

  private void write(Quantities quantities) {
    TakeoffFigures figures = new TakeoffFigures(quantities.imperial());
    writeParts(quantities, figures);
    writeRuns(quantities.runs(), figures);
    quantities.freight().ifPresent(freight -> writeFreight(freight, figures));
    quantities.crew().ifPresent(this::writeCrew);
    quantities.comparison().ifPresent(comparison -> writeComparison(comparison, figures));
    writeNotCounted(quantities.notCounted());
  }

  private void heading(String text) {
    sheet.gap();
    sheet.prose(0, Role.HEADING, text);
  }

  private void writeParts(Quantities quantities, TakeoffFigures figures) {
    heading("Parts");
    TextTable table = new TextTable(Set.of(2, 3, 4, 5, 6));
    String unit = figures.massUnit();
    table.add(List.of("what", "part", "drawn", "spares", "order", unit + " each", unit));
    for (PartLine line : quantities.lines()) {
      table.add(cells(line, figures));
    }
    sheet.table(INDENT, table);
    sheet.prose(
        INDENT,
        Role.PLAIN,
        "Counted on the drawing, one by one. Spares: "
            + share(quantities.spares())
            + " of each part, rounded up; modules as drawn.");
  }

  private static List<String> cells(PartLine line, TakeoffFigures figures) {
    String name = line.part().name();
    return List.of(
        line.part().kind().word(),
        name.isEmpty() ? "none named" : name,
        String.valueOf(line.count()),
        line.part().kind() == PartKind.MODULE ? "" : String.valueOf(line.spares()),
        String.valueOf(line.order()),
        figures.massEach(line.eachKg()),
        figures.mass(line.orderKg()));
  }

  private void writeRuns(List<Run> runs, TakeoffFigures figures) {
    if (runs.isEmpty()) {
      return;
    }
    heading("Lengths");
    TextTable table = new TextTable(Set.of(1));
    runs.forEach(run -> table.add(List.of(run.what(), figures.length(run.lengthM()), run.from())));
    sheet.table(INDENT, table);
  }

  private void writeFreight(Freight freight, TakeoffFigures figures) {
    heading("Freight");
    Freight.Packing packing = freight.packing();
    TextTable table = new TextTable();
    table.add(List.of("modules", figures.massText(freight.modulesKg())));
    String of = freight.hardwareShare().map(part -> ", " + share(part) + " of all").orElse("");
    table.add(List.of("hardware", figures.massText(freight.hardwareKg()) + of));
    table.add(
        List.of(
            "pallets",
            range(freight.fewest(), freight.most())
                + ", at "
                + range(packing.least(), packing.most())
                + " modules a pallet"));
    table.add(List.of("all", figures.massText(freight.totalKg()) + ", with the fewest pallets"));
    sheet.table(INDENT, table);
  }

  private void writeCrew(Crew crew) {
    heading("Crew time (practice, no source)");
    TextTable table = new TextTable(Set.of(2, 3, 4));
    table.add(List.of("phase", "of", "number", "each", "time"));
    for (Task task : crew.tasks()) {
      table.add(
          List.of(
              task.phase().word(),
              task.what(),
              number(task.number()),
              each(task.each()),
              hours(task.seconds())));
    }
    table.add(List.of("all", "", "", "", hours(crew.seconds())));
    sheet.table(INDENT, table);
  }

  private void writeComparison(Comparison comparison, TakeoffFigures figures) {
    heading("The same modules on rails");
    TextTable table = new TextTable(Set.of(1, 2));
    table.add(List.of("", "as drawn", "on rails"));
    add(table, "attachments", comparison, side -> String.valueOf(side.attachments()));
    add(table, "mid clamps", comparison, side -> String.valueOf(side.midClamps()));
    add(table, "end clamps", comparison, side -> String.valueOf(side.endClamps()));
    add(table, "rails", comparison, side -> figures.length(side.railM()));
    add(table, "pieces of rail", comparison, side -> String.valueOf(side.railPieces()));
    add(table, "splices", comparison, side -> String.valueOf(side.splices()));
    add(table, "bonding jumpers", comparison, side -> String.valueOf(side.jumpers()));
    add(table, "grounding lugs", comparison, side -> String.valueOf(side.lugs()));
    add(table, "hardware", comparison, side -> figures.massText(side.hardwareKg()));
    add(table, "crew time", comparison, side -> hours(side.crewS()));
    sheet.table(INDENT, table);
    sheet.prose(
        INDENT,
        Role.PLAIN,
        "Without spares and cables. The rails are an estimate to compare with, no layout: neither"
            + " clamp zones nor loads are checked. Assumed:");
    TextTable assumed = new TextTable(Set.of(0));
    for (Limit limit : comparison.assumed()) {
      assumed.add(List.of(figures.assumed(limit), limit.validity()));
    }
    sheet.table(INDENT, assumed);
  }

  private static void add(
      TextTable table, String what, Comparison comparison, Function<Side, String> cell) {
    table.add(List.of(what, cell.apply(comparison.drawn()), cell.apply(comparison.railed())));
  }

  private void writeNotCounted(List<NotCounted> missing) {
    if (missing.isEmpty()) {
      return;
    }
    heading("Not counted (" + missing.size() + ")");
    missing.forEach(each -> sheet.prose(INDENT, Role.PLAIN, each.what() + ": " + each.reason()));
  }

  /** What holds for every take-off; once, after the last job. */
  public void writeCaution() {
    sheet.gap();
    sheet.prose(0, Role.PLAIN, Cautions.NO_APPROVAL_BY_NUMBERS);
  }
}
