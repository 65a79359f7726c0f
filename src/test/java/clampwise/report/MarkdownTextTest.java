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
  void aTableKeepsItsLines() {
    assertThat(text("| a | b |\n|---|---|\n| 1 | 2 |"))
        .isEqualTo("  | a | b |\n  |---|---|\n  | 1 | 2 |\n");
  }
}
