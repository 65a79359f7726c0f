package clampwise.calc.statics;

import clampwise.calc.trail.Term;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A formula under way with the terms that stand in it. */
final class Expression {

  private final StringBuilder text = new StringBuilder();
  private final Map<String, Term> terms = new LinkedHashMap<>();

  /** Adds text; {@code $1}, {@code $2} stand for the symbols of the terms. */
  Expression add(String written, Term... used) {
    String part = written;
    for (int i = used.length; i >= 1; i--) {
      part = part.replace("$" + i, used[i - 1].symbol());
      terms.putIfAbsent(used[i - 1].symbol(), used[i - 1]);
    }
    text.append(part);
    return this;
  }

  /** Adds a summand; {@code +} stands before all but the first. */
  Expression plus(String written, Term... used) {
    return add(text.length() == 0 ? written : "+" + written, used);
  }

  /** Adds another formula in brackets, with text before and behind. */
  Expression plus(Expression other, String behind, Term... used) {
    if (!other.isEmpty()) {
      plus("(" + other.text + ")" + behind, used);
      other.terms.forEach(terms::putIfAbsent);
    }
    return this;
  }

  boolean isEmpty() {
    return text.length() == 0;
  }

  String text() {
    return text.toString();
  }

  List<Term> terms() {
    return new ArrayList<>(terms.values());
  }
}
