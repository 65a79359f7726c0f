package clampwise.units;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A text cut into numbers and unit spellings: {@code 31'-7 1/2"} is 31 of {@code '} and 7 1/2 of
 * {@code "}.
 */
record Terms(boolean negative, List<Term> terms) {

  record Term(Figure figure, String unit) {}

  double sign() {
    return negative ? -1 : 1;
  }

  Term first() {
    return terms.get(0);
  }

  /** The terms of a text, or nothing if it does not consist of numbers and units. */
  static Optional<Terms> read(String text) {
    Scanner scanner = new Scanner(text.strip());
    boolean negative = scanner.sign();
    List<Term> terms = new ArrayList<>();
    while (!scanner.atEnd()) {
      Optional<Figure> figure = new FigureScanner(scanner).figure();
      if (figure.isEmpty()) {
        return Optional.empty();
      }
      terms.add(new Term(figure.get(), scanner.unit()));
    }
    return terms.isEmpty() ? Optional.empty() : Optional.of(new Terms(negative, terms));
  }
}
