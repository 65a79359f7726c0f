package clampwise.proof;

import com.ezylang.evalex.EvaluationException;
import com.ezylang.evalex.Expression;
import com.ezylang.evalex.parser.ParseException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Fills {@code $name}, {@code $(name)} and {@code $<arithmetic>} of a text with what is known of a
 * job.
 */
final class Words {
  private static final Pattern PLACE = Pattern.compile("\\$(?:(\\w+)|\\((\\w+)\\)|<([^>\\n]+)>)");
  private static final MathContext DIGITS = new MathContext(12);

  private final Map<String, Object> values = new LinkedHashMap<>();

  Words put(String name, Object value) {
    values.put(name, value);
    return this;
  }

  Words putAll(Words other) {
    values.putAll(other.values);
    return this;
  }

  Object get(String name) {
    Object value = values.get(name);
    if (value == null) {
      throw new IllegalArgumentException(name + " is none of " + values.keySet());
    }
    return value;
  }

  double number(String name) {
    return ((Number) get(name)).doubleValue();
  }

  String fill(String text) {
    return PLACE.matcher(text).replaceAll(place -> Matcher.quoteReplacement(filled(place)));
  }

  /** The same value with all its texts filled. */
  Object fill(Object value) {
    if (value instanceof Map) {
      Map<String, Object> filled = new LinkedHashMap<>();
      Draft.mapping(value).forEach((key, each) -> filled.put(fill(key), fill(each)));
      return filled;
    }
    if (value instanceof List) {
      List<Object> filled = new ArrayList<>();
      Draft.list(value).forEach(each -> filled.add(fill(each)));
      return filled;
    }
    return fill((String) value);
  }

  private String filled(MatchResult place) {
    String name = place.group(1) == null ? place.group(2) : place.group(1);
    return printed(name == null ? worth(place.group(3)) : get(name));
  }

  private static String printed(Object value) {
    return value instanceof Number number
        ? new BigDecimal(number.toString()).round(DIGITS).stripTrailingZeros().toPlainString()
        : value.toString();
  }

  private BigDecimal worth(String arithmetic) {
    Expression expression = new Expression(arithmetic);
    values.forEach(
        (name, value) -> {
          if (value instanceof Number) {
            expression.with(name, value);
          }
        });
    try {
      return expression.evaluate().getNumberValue();
    } catch (EvaluationException | ParseException e) {
      throw new IllegalArgumentException(arithmetic, e);
    }
  }
}
