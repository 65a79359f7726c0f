package clampwise.report;

import clampwise.report.JUnitCase.Outcome;
import clampwise.review.Cautions;
import clampwise.review.Review;
import java.io.IOException;
import java.util.EnumMap;
import java.util.Map;

/**
 * A run as JUnit XML, for build servers: a suite a job, a test case for each rule and each part of
 * the job at which it finds something or that it could not judge, and one for all that meet it.
 */
final class JUnitReport {

  private final Appendable out;
  private final String version;

  /** The job whose suite is written; it stands for the package of the rules. */
  private String file = "clampwise";

  private JUnitReport(String version, Appendable out) {
    this.out = out;
    this.version = version;
  }

  static void write(Run run, Appendable out) throws IOException {
    JUnitReport report = new JUnitReport(run.version(), out);
    out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<testsuites name=\"clampwise\">\n");
    for (Review review : run.reviews()) {
      report.suite(review);
    }
    if (run.isFaulty()) {
      report.fault(run.outcome());
    }
    out.append("</testsuites>\n");
  }

  private void suite(Review review) throws IOException {
    file = review.file();
    JUnitCases cases = new JUnitCases(review);
    Map<Outcome, Integer> counts = new EnumMap<>(Outcome.class);
    cases.each(one -> counts.merge(one.outcome(), 1, Integer::sum));
    open(review.file() + ": " + TextReport.title(review), counts);
    out.append("<properties>\n");
    property("version", version);
    property("modules", String.valueOf(review.modules()));
    property("note", Cautions.NO_APPROVAL);
    out.append("</properties>\n");
    cases.each(this::testCase);
    out.append("</testsuite>\n");
  }

  private void open(String name, Map<Outcome, Integer> counts) throws IOException {
    int tests = 0;
    for (int count : counts.values()) {
      tests += count;
    }
    out.append("<testsuite name=\"").append(Markup.of(name)).append('"');
    number("tests", tests);
    number("failures", counts.getOrDefault(Outcome.FAILURE, 0));
    number("errors", counts.getOrDefault(Outcome.ERROR, 0));
    number("skipped", counts.getOrDefault(Outcome.SKIPPED, 0));
    number("time", 0);
    out.append(">\n");
  }

  private void number(String name, int value) throws IOException {
    out.append(' ').append(name).append("=\"").append(String.valueOf(value)).append('"');
  }

  private void property(String name, String value) throws IOException {
    out.append("<property");
    attribute("name", name);
    attribute("value", value);
    out.append("/>\n");
  }

  private void attribute(String name, String value) throws IOException {
    out.append(' ').append(name).append("=\"").append(Markup.of(value)).append('"');
  }

  private void testCase(JUnitCase one) throws IOException {
    out.append("<testcase");
    attribute("classname", file + "." + one.rule());
    attribute("name", one.name());
    out.append(" time=\"0\">");
    switch (one.outcome()) {
      case PASSED ->
          out.append("<system-out>").append(Markup.of(one.text())).append("</system-out>");
      case SKIPPED -> said("skipped", one);
      case FAILURE -> said("failure", one);
      case ERROR -> said("error", one);
    }
    out.append("</testcase>\n");
  }

  private void said(String element, JUnitCase one) throws IOException {
    out.append('<').append(element);
    if (!one.type().isEmpty()) {
      attribute("type", one.type());
    }
    attribute("message", one.message());
    if (one.text().isEmpty()) {
      out.append("/>");
      return;
    }
    out.append('>');
    for (String line : one.text().split("\n", -1)) {
      out.append('\n').append(Markup.of(line));
    }
    out.append("</").append(element).append('>');
  }

  private void fault(String outcome) throws IOException {
    file = "clampwise";
    open(file, Map.of(Outcome.ERROR, 1));
    testCase(JUnitCase.error("fault", "a job", outcome));
    out.append("</testsuite>\n");
  }
}
