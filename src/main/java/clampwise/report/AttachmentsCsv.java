package clampwise.report;

import clampwise.facts.Fact;
import clampwise.facts.Facts;
import clampwise.facts.Subjects;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.layout.SeamLine;
import clampwise.facts.layout.ZoneArea;
import clampwise.facts.loads.AttachmentUse;
import clampwise.job.Text;
import clampwise.review.Cautions;
import clampwise.review.Review;
import clampwise.source.CsvText;
import clampwise.units.QuantityPrint;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The attachments of all jobs as one table for spreadsheets, in SI units. */
final class AttachmentsCsv {

  private static final int DECIMALS = 4;
  private static final int DECIMALS_OF_FORCE = 1;

  private static final List<String> COLUMNS =
      List.of(
          "file",
          "job",
          "plane",
          "field",
          "attachment",
          "line",
          "seam or rib",
          "along the eave (m)",
          "up the slope (m)",
          "off its seam (m)",
          "part",
          "clamp",
          "holds",
          "modules",
          "wind zone",
          "share of strength",
          "share that may be used",
          "direction",
          "combination",
          "force across the roof (N)",
          "force along the seam (N)",
          "strength across the roof (N)",
          "strength along the seam (N)",
          "not checked");

  private static final List<String> NO_USE = Collections.nCopies(8, "");

  private final CsvText out;

  private AttachmentsCsv(CsvText out) {
    this.out = out;
  }

  static void write(Run run, Appendable out) throws IOException {
    out.append(CsvText.UTF_8_MARK);
    AttachmentsCsv table = new AttachmentsCsv(new CsvText(out));
    table.out.row(COLUMNS);
    for (Review review : run.reviews()) {
      if (review.facts().isEmpty()) {
        table.unknown(List.of(review.file(), review.title(), "", ""), SummaryText.NO_MODULE);
      } else {
        table.write(review, review.facts().get());
      }
    }
    table.unknown(List.of("", "", "", ""), Cautions.NO_APPROVAL_BY_NUMBERS);
  }

  private void write(Review review, Facts facts) throws IOException {
    Map<String, AttachmentUse> uses = new HashMap<>();
    for (Fact fact : facts.facts()) {
      if (fact instanceof AttachmentUse use) {
        uses.put(use.attachment(), use);
      }
    }
    UseReasons reasons = new UseReasons(facts.missing());
    for (PlaneLayout plane : facts.layout().planes()) {
      for (FieldLayout field : plane.fields()) {
        List<String> where = List.of(review.file(), review.title(), plane.name(), field.name());
        if (field.attachmentsUnknown().isPresent()) {
          unknown(where, field.attachmentsUnknown().get());
        }
        for (Attachment one : field.attachments()) {
          row(where, one, Optional.ofNullable(uses.get(one.name())), reasons);
        }
      }
    }
  }

  private void row(
      List<String> where, Attachment one, Optional<AttachmentUse> use, UseReasons reasons)
      throws IOException {
    List<String> cells = new ArrayList<>(where);
    place(one, cells);
    use.ifPresentOrElse(known -> use(known, cells), () -> cells.addAll(NO_USE));
    String field = where.get(where.size() - 1);
    String own =
        one.name().startsWith(field + ".") ? one.name().substring(field.length() + 1) : one.name();
    Set<String> why = reasons.of(Subjects.field(field), own, text(one.part()));
    cells.add(use.isEmpty() && why.isEmpty() ? "it carries no module" : String.join("; ", why));
    end(cells);
  }

  private static void place(Attachment one, List<String> cells) {
    cells.add(one.name());
    cells.add(one.line() == 0 ? "" : String.valueOf(one.line()));
    cells.add(one.seam().map(SeamLine::name).orElse(""));
    cells.add(number(one.alongM()));
    cells.add(number(one.upM()));
    cells.add(one.seam().map(unused -> number(one.offsetM())).orElse(""));
    cells.add(text(one.part()));
    cells.add(text(one.clamp()));
    cells.add(
        switch (one.kind()) {
          case MID -> "two modules";
          case END -> "one module";
          case NONE -> "no module";
        });
    List<String> modules = new ArrayList<>();
    one.grips().forEach(grip -> modules.add(grip.module().name()));
    cells.add(String.join(", ", modules));
    cells.add(one.zone().map(ZoneArea::name).orElse(""));
  }

  private static void use(AttachmentUse use, List<String> cells) {
    cells.add(number(use.utilisation()));
    cells.add(number(use.most()));
    cells.add(use.pull());
    cells.add(use.combination());
    cells.add(force(use.normalN()));
    cells.add(force(use.alongN()));
    cells.add(force(use.normalStrengthN()));
    cells.add(force(use.alongStrengthN()));
  }

  private static String text(Optional<Text> text) {
    return text.map(Text::value).orElse("");
  }

  private static String number(double value) {
    return QuantityPrint.trimmed(value, DECIMALS);
  }

  /** Empty where no strength is stated. */
  private static String force(double newton) {
    return Double.isFinite(newton) ? QuantityPrint.trimmed(newton, DECIMALS_OF_FORCE) : "";
  }

  /** A row that says why there are none. */
  private void unknown(List<String> where, String reason) throws IOException {
    List<String> cells = new ArrayList<>(where);
    cells.addAll(Collections.nCopies(COLUMNS.size() - cells.size() - 1, ""));
    cells.add(reason);
    end(cells);
  }

  private void end(List<String> cells) throws IOException {
    List<String> harmless = new ArrayList<>();
    cells.forEach(cell -> harmless.add(Harmless.of(cell)));
    out.row(harmless);
  }
}
