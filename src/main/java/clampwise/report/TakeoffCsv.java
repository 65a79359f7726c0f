package clampwise.report;

import clampwise.review.TakenOff;
import clampwise.source.CsvText;
import clampwise.takeoff.Comparison;
import clampwise.takeoff.Freight;
import clampwise.takeoff.NotCounted;
import clampwise.takeoff.PartLine;
import clampwise.takeoff.Quantities;
import clampwise.takeoff.Run;
import clampwise.takeoff.Side;
import clampwise.takeoff.Task;
import clampwise.units.QuantityPrint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Take-offs as one CSV table, in SI units; a cell without a number is not known. */
public final class TakeoffCsv {

  private static final int MOST_DECIMALS = 3;

  private static final List<String> COLUMNS =
      List.of("file", "group", "what", "part", "drawn", "spares", "quantity", "unit", "kg", "note");

  private final List<List<String>> rows = new ArrayList<>();
  private final String file;

  private TakeoffCsv(String file) {
    this.file = Harmless.of(file);
  }

  /** The table of all jobs of a run. */
  public static String of(List<TakenOff> jobs) {
    List<List<String>> rows = new ArrayList<>(List.of(COLUMNS));
    for (TakenOff job : jobs) {
      TakeoffCsv table = new TakeoffCsv(job.file());
      job.quantities().ifPresent(table::add);
      rows.addAll(table.rows);
    }
    return CsvText.of(rows);
  }

  private void add(Quantities quantities) {
    quantities.lines().forEach(this::add);
    quantities.runs().forEach(this::add);
    quantities.freight().ifPresent(this::add);
    quantities.crew().ifPresent(crew -> crew.tasks().forEach(this::add));
    quantities.comparison().ifPresent(this::add);
    quantities.notCounted().forEach(this::add);
  }

  private void add(PartLine line) {
    row(
        "part",
        line.part().kind().word(),
        line.part().name(),
        String.valueOf(line.count()),
        String.valueOf(line.spares()),
        String.valueOf(line.order()),
        "pcs",
        number(line.orderKg()),
        "");
  }

  private void add(Run run) {
    amount("length", run.what(), number(run.lengthM()), "m", run.from());
  }

  private void add(Freight freight) {
    amount("freight", "pallets, fewest", String.valueOf(freight.fewest()), "pcs", "");
    amount("freight", "pallets, most", String.valueOf(freight.most()), "pcs", "");
    mass("modules", freight.modulesKg());
    mass("hardware", freight.hardwareKg());
    mass("all, with the fewest pallets", freight.totalKg());
  }

  private void mass(String what, Optional<Double> kg) {
    row("freight", what, "", "", "", number(kg), "kg", number(kg), "");
  }

  private void add(Task task) {
    String note = number(task.number()) + " x " + number(task.each()) + " s";
    String what = task.phase().word() + ", " + task.what();
    amount("crew", what, number(task.seconds()), "s", note);
  }

  private void add(Comparison comparison) {
    add("as drawn", comparison.drawn());
    add("on rails", comparison.railed());
  }

  private void add(String group, Side side) {
    amount(group, "attachments", String.valueOf(side.attachments()), "pcs", "");
    amount(group, "mid clamps", String.valueOf(side.midClamps()), "pcs", "");
    amount(group, "end clamps", String.valueOf(side.endClamps()), "pcs", "");
    amount(group, "rails", number(side.railM()), "m", "");
    amount(group, "pieces of rail", String.valueOf(side.railPieces()), "pcs", "");
    amount(group, "splices", String.valueOf(side.splices()), "pcs", "");
    amount(group, "bonding jumpers", String.valueOf(side.jumpers()), "pcs", "");
    amount(group, "grounding lugs", String.valueOf(side.lugs()), "pcs", "");
    row(group, "hardware", "", "", "", number(side.hardwareKg()), "kg", "", "");
    amount(group, "crew time", number(side.crewS()), "s", "");
  }

  private void add(NotCounted missing) {
    amount("not counted", missing.what(), "", "", missing.reason());
  }

  private void amount(String group, String what, String quantity, String unit, String note) {
    row(group, what, "", "", "", quantity, unit, "", note);
  }

  private void row(String... cells) {
    List<String> row = new ArrayList<>(List.of(file));
    for (String cell : cells) {
      row.add(Harmless.of(cell));
    }
    rows.add(row);
  }

  private static String number(double value) {
    return QuantityPrint.trimmed(value, MOST_DECIMALS);
  }

  private static String number(Optional<Double> value) {
    return value.map(TakeoffCsv::number).orElse("");
  }
}
