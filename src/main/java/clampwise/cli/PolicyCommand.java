package clampwise.cli;

import clampwise.catalogue.Limit;
import clampwise.policy.HouseLimits;
import clampwise.policy.Policy;
import clampwise.report.Paint;
import clampwise.report.ProblemLine;
import clampwise.report.Role;
import clampwise.report.Sheet;
import clampwise.source.Node;
import clampwise.units.QuantityPrint;
import java.util.Map;
import java.util.TreeMap;

/** {@code clampwise policy}: what a house asks of a job, and where each line of it is written. */
final class PolicyCommand {

  private static final int INDENT = 2;

  private final Console console;
  private final Sheet sheet;

  PolicyCommand(Console console) {
    this.console = console;
    this.sheet = new Sheet(console.screen().textWidth(), Paint.NONE);
  }

  /** Shows the policy in force for a job. */
  int run(String job, Policy policy) {
    policy.problems().forEach(one -> console.complain(one.at() + ": " + ProblemLine.of(one)));
    sheet.prose(0, Role.HEADING, "Policy in force for " + job);
    if (policy.sources().isEmpty()) {
      sheet.prose(INDENT, Role.PLAIN, "none: the rules and limits as they ship");
    }
    policy.sources().forEach(source -> sheet.whole(INDENT, Role.PLACE, source.file()));
    for (Node.Entry entry : policy.written().entries()) {
      sheet.gap();
      write(0, entry);
    }
    console.print(sheet.toString());
    return policy.problems().isEmpty() ? ExitCode.CLEAR : ExitCode.UNUSABLE;
  }

  private void write(int indent, Node.Entry entry) {
    String key = entry.key().text() + ":";
    if (entry.value() instanceof Node.Mapping mapping) {
      sheet.whole(indent, Role.PLAIN, key);
      mapping.entries().forEach(inner -> write(indent + INDENT, inner));
    } else if (entry.value() instanceof Node.Scalar value) {
      sheet.whole(indent, Role.PLAIN, key + " " + value.text() + "    # " + value.at());
    } else {
      sheet.whole(indent, Role.PLAIN, key + " a list    # " + entry.value().at());
    }
  }

  /** Lists the limits that a house may set itself. */
  int limits() {
    Map<String, Limit> limits = new TreeMap<>(HouseLimits.shipped());
    for (Map.Entry<String, Limit> limit : limits.entrySet()) {
      Limit shipped = limit.getValue();
      String value = QuantityPrint.text(shipped.si(), shipped.unit());
      sheet.prose(0, Role.PLAIN, limit.getKey() + ": " + value);
      sheet.prose(INDENT, Role.PLAIN, "for " + shipped.validity());
    }
    console.print(sheet.toString());
    return ExitCode.CLEAR;
  }
}
