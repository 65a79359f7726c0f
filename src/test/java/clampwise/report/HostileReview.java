package clampwise.report;

import clampwise.finding.Accepted;
import clampwise.finding.Basis;
import clampwise.finding.Comparison;
import clampwise.finding.Coverage;
import clampwise.finding.Finding;
import clampwise.finding.FindingName;
import clampwise.finding.NotChecked;
import clampwise.finding.Place;
import clampwise.finding.Severity;
import clampwise.finding.Subject;
import clampwise.review.Review;
import clampwise.source.Position;
import clampwise.source.Problem;
import clampwise.source.SourceText;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reviews in which every text that a job may bring is up to no good. */
final class HostileReview {

  /** Texts that some reader of some format would obey, hide, reorder or stumble over. */
  static final List<String> TEXTS =
      List.of(
          "<script>alert(1)</script>",
          "<img src=x onerror=alert(1)>",
          "\"><svg onload='alert(1)'>",
          "]]> &amp; <![CDATA[ <!-- --> <?php ?>",
          "</details></td></table>",
          "\u0000\u0007\b\u001b[31m\u009b2J\u001b]0;owned\u0007",
          "\u202egnp.exe \u2066x\u2069 \u200b\ufeff",
          "\ufffe\uffff \ud800 lone",
          "one\ntwo\r\nthree\rfour\u2028five\tsix",
          "=1+1",
          "+cmd|' /C calc'!A0",
          "-2+3+cmd",
          "@SUM(A1:A9)",
          "\t=1+1",
          "\r=1+1",
          "\uff1d1+1",
          "\"quoted\", and; separated",
          "[x](javascript:alert(1)) ![y](http://example.invalid/y.png)",
          "[here](1) {0} {{1}} {",
          "`code` ``` *bold* _it_ ~~gone~~ | cell | \\",
          "# heading\n\n- item\n> quote\n---",
          "@everyone #12 !7 ~label %3 $5 &9 http://example.invalid www.example.invalid",
          "😀𝒳 four bytes each",
          "W".repeat(5_000));

  private HostileReview() {}

  /** One review for each text, and a job with such names reviewed from end to end. */
  static Run run() {
    List<Review> reviews = new ArrayList<>();
    TEXTS.forEach(text -> reviews.add(saying(text)));
    reviews.add(Hostile.review());
    return new Run(reviews, "0.1.0", 2);
  }

  /** A review in which everything says one text. */
  static Review saying(String text) {
    Finding first = finding(text, "first", Severity.ERROR);
    Finding second = finding(text, "second", Severity.WARNING);
    FindingName other = first.name();
    List<Finding> findings =
        List.of(first, second, finding(text, "third", Severity.NOTE).following(other));
    List<NotChecked> gaps = List.of(new NotChecked("fourth", Subject.of(text), text, at(text)));
    List<Coverage> coverage =
        List.of(new Coverage("first", 3, 2, 0), new Coverage("fourth", 0, 0, 1));
    byte[] source = text.getBytes(StandardCharsets.UTF_8);
    return new Review(
        text,
        text,
        text,
        2,
        List.of(new Problem(at(text), text, text, Optional.of(text))),
        findings,
        gaps,
        coverage,
        List.of(accepted(text)),
        Optional.empty(),
        Optional.empty(),
        List.of(new SourceText(text, source)));
  }

  private static Finding finding(String text, String rule, Severity severity) {
    Optional<Comparison> numbers = Optional.of(new Comparison(-0.5, 0, Unit.MILLIMETRE));
    List<Place> places = new ArrayList<>();
    places.add(new Place(Subject.of(text, text + " 1"), at(text), numbers));
    places.add(new Place(Subject.of(text, text + " 2"), at(text), numbers));
    return new Finding(
        rule,
        severity,
        text,
        text,
        text,
        text,
        List.of(new Basis(text, text, text, text, text)),
        Subject.of(text, text),
        at(text),
        numbers,
        places,
        Optional.empty(),
        Optional.empty());
  }

  private static Accepted accepted(String text) {
    Finding answered = finding(text, "fifth", Severity.ERROR);
    return new Accepted(answered, Accepted.Kind.DEVIATION, text, text, text, at(text));
  }

  private static Span at(String text) {
    return new Span(text, new Position(1, 3), new Position(1, 9));
  }
}
