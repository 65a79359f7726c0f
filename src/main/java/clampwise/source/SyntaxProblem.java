package clampwise.source;

import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;

/** Puts what a YAML parser complains about into words that say what to change. */
final class SyntaxProblem {

  private static final String NO_COLON = "could not find expected ':'";

  private SyntaxProblem() {}

  static Problem of(String file, String text, MarkedYamlEngineException fault) {
    String problem = String.valueOf(fault.getProblem());
    String context = String.valueOf(fault.getContext());
    boolean unclosed = context.contains("quoted scalar") && problem.contains("end of stream");
    boolean noColon = problem.contains(NO_COLON);
    Mark mark =
        (unclosed || noColon ? fault.getContextMark() : fault.getProblemMark())
            .or(fault::getContextMark)
            .orElseThrow(() -> fault);
    Position at = TreeBuilder.position(mark);
    Span span = new Span(file, at, at);
    return unclosed
        ? Problem.of(span, "a quote that is never closed", "a closing quote")
        : inWords(span, problem, context, characterAt(text, mark));
  }

  static Problem of(String file, String text, ReaderException fault) {
    int index =
        text.offsetByCodePoints(0, Math.max(0, Math.min(fault.getPosition(), length(text))));
    Position at = Utf8.positionAt(text, index);
    return Problem.of(
        new Span(file, at, at),
        String.format("the control character U+%04X", fault.getCodePoint()),
        "printable text");
  }

  /** A text in quotes that ends where the next one was to begin, and breaks the line there. */
  static Problem ofQuote(Span quoted) {
    return Problem.of(
        new Span(quoted.file(), quoted.start(), quoted.start()),
        "a quote that closes only in line " + quoted.end().line(),
        "a closing quote in its own line");
  }

  private static int length(String text) {
    return text.codePointCount(0, text.length());
  }

  private static int characterAt(String text, Mark mark) {
    int count = length(text);
    return mark.getIndex() < count
        ? text.codePointAt(text.offsetByCodePoints(0, mark.getIndex()))
        : -1;
  }

  private static Problem inWords(Span at, String problem, String context, int character) {
    if (problem.contains("TAB") || character == '\t') {
      return Problem.of(at, "a tab", "spaces: indentation is made of spaces only");
    }
    if (problem.contains("mapping values are not allowed")) {
      return Problem.of(
          at,
          "a colon where no key can stand",
          "quotes round a text that holds ': ', a colon behind the key of the line above, or the"
              + " same indentation as that key");
    }
    if (problem.contains(NO_COLON)) {
      return Problem.of(at, "a key without a colon", "key: value");
    }
    if (problem.contains("<block end>")) {
      return Problem.of(
          at, "a line whose indentation fits no line above", "the indentation of its neighbours");
    }
    if (context.contains("flow")) {
      return Problem.of(at, "a list or mapping that is not closed here", "',', ']' or '}'");
    }
    return Problem.of(at, "text that is not YAML (" + problem.strip() + ")", "YAML or JSON");
  }
}
