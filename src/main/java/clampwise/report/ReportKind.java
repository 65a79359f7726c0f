package clampwise.report;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a report is written as; the ending of its file's name decides. */
public enum ReportKind {
  HTML(".html"),
  PDF(".pdf"),
  SVG(".svg"),
  MARKDOWN(".md"),
  SARIF(".sarif"),
  JUNIT(".xml"),
  ATTACHMENTS("attachments.csv"),
  FINDINGS(".csv"),
  JSON(".json");

  private final String ending;

  ReportKind(String ending) {
    this.ending = ending;
  }

  /** The kind for a file of this name, if its ending is one of ours. */
  public static Optional<ReportKind> of(String file) {
    String name = file.toLowerCase(Locale.ROOT);
    return Arrays.stream(values()).filter(kind -> name.endsWith(kind.ending)).findFirst();
  }

  /** Whether it shows what only the facts of a job know, not its review alone. */
  public boolean needsFacts() {
    return this == HTML || this == PDF || this == SVG || this == ATTACHMENTS;
  }

  /** All endings, in the order in which they are explained. */
  public static List<String> endings() {
    return Arrays.stream(values()).map(kind -> kind.ending).distinct().toList();
  }

  /** Writes a run and closes the stream; the same run gives the same bytes. */
  public void write(Run run, OutputStream out) throws IOException {
    if (this == PDF) {
      PdfReport.write(run, out);
    } else {
      try (Writer text = text(out)) {
        write(run, text);
      }
    }
  }

  private void write(Run run, Writer text) throws IOException {
    switch (this) {
      case HTML -> HtmlReport.write(run, text);
      case SVG -> SvgPlan.write(run, text);
      case JUNIT -> JUnitReport.write(run, text);
      case ATTACHMENTS -> AttachmentsCsv.write(run, text);
      case FINDINGS -> FindingsCsv.write(run, text);
      case MARKDOWN -> MarkdownReport.write(run, text);
      case SARIF -> SarifReport.write(run, text);
      case JSON -> JsonReport.write(run.reviews(), run.version(), text);
      case PDF -> throw new IllegalStateException("a PDF is no text");
    }
  }

  private static Writer text(OutputStream out) {
    return new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
  }
}
