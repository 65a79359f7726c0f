package clampwise.rulebook;

import java.util.ArrayList;
import java.util.List;

/** Finds the operands of commas, {@code &&} and {@code ||} in the left side of a rule. */
final class Operands {
  private final String left;
  private final List<Cut> cuts = new ArrayList<>();
  private int at;

  /** A stretch that can be cut out so that one operand is missing and the rest still reads well. */
  record Cut(int from, int to) {}

  private record Operand(int from, int to, int separatorEnd) {}

  private Operands(String left) {
    this.left = left;
  }

  static List<Cut> cuts(String left) {
    Operands operands = new Operands(left);
    operands.group();
    return operands.cuts;
  }

  /** Reads up to the bracket that closes this group. */
  private void group() {
    List<Operand> operands = new ArrayList<>();
    int from = at;
    while (at < left.length() && left.charAt(at) != ')') {
      int separator = separatorLength();
      if (separator > 0) {
        operands.add(new Operand(from, at, at + separator));
        at += separator;
        from = at;
      } else if (left.charAt(at++) == '(') {
        group();
        at++;
      }
    }
    operands.add(new Operand(from, at, at));
    cut(operands);
  }

  private int separatorLength() {
    if (left.charAt(at) == ',') {
      return 1;
    }
    return left.startsWith("&&", at) || left.startsWith("||", at) ? 2 : 0;
  }

  private void cut(List<Operand> operands) {
    for (int i = 0; i < operands.size() && operands.size() > 1; i++) {
      Operand operand = operands.get(i);
      int before = i == 0 ? -1 : strength(operands.get(i - 1));
      boolean withNext = strength(operand) > before;
      int from = withNext ? operand.from() : operands.get(i - 1).to();
      cuts.add(new Cut(from, withNext ? operand.separatorEnd() : operand.to()));
    }
  }

  /** How strongly what follows an operand binds it; nothing binds least. */
  private int strength(Operand operand) {
    return switch (left.substring(operand.to(), operand.separatorEnd())) {
      case "&&" -> 3;
      case "||" -> 2;
      case "," -> 1;
      default -> 0;
    };
  }
}
