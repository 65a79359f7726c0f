package clampwise.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class MarkdownTextTest {

  private static String text(String markdown) {
    Sheet sheet = new Sheet(44, Paint.NONE);
    new MarkdownText(sheet).write(markdown);
    return sheet.toString();
  }

  @Test
  void aPageReadsWellOnATerminal() {
    String page =
        """
        # Clamp too near a lap

        ## What is checked

        Each `seam clamp` is held against the **nearest** end lap of
        its panel.

        - first point that is long enough to need a second line
        - second

        ```yaml
        planes:
          south: {}
        ```
        After.
        """;
    assertThat(text(page))
        .isEqualTo(
            """
            Clamp too near a lap

            What is checked

              Each seam clamp is held against the
              nearest end lap of its panel.

              - first point that is long enough to need
                a second line
              - second

                planes:
                  south: {}

              After.
            """);
  }

  @Test
  void aTableStandsInColumnsAndWrapsItsLongCells() {
    String page =
        """
        | symbol | meaning | unit |
        |---|:---:|---|
        | c | middle of the `clamp` to the nearer corner | mm |
        | x, L | left corner | mm |
        """;
    assertThat(text(page))
        .isEqualTo(
            """
              symbol  meaning                     unit
              c       middle of the clamp to the  mm
                      nearer corner
              x, L    left corner                 mm
            """);
  }

  @Test
  void linksEmphasisAndPartedWordsAreText() {
    String page =
        """
        Judged by [another rule](another-rule.md), or *not checked*; the clamp-
        zone stays a word, as do mid-
        and end clamps and a * b * c.
        """;
    assertThat(text(page).replaceAll("\\s+", " "))
        .isEqualTo(
            " Judged by another rule, or not checked; the clamp-zone stays a word, as do mid- and"
                + " end clamps and a * b * c. ");
  }

  @Test
  void aLongLineOfAnExampleGoesOnFurtherIn() {
    assertThat(text("```yaml\nM30:\n  zones: [{side: long, zone: 1 mm}, {side: short}]\n```\n"))
        .isEqualTo(
            """
                M30:
                  zones: [{side: long, zone: 1 mm},
                      {side: short}]

            """);
  }
}
