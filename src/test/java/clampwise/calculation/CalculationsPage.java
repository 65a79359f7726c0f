package clampwise.calculation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The documentation of the calculations, written from their registry and the reference cases. */
final class CalculationsPage {

  private static final String INTRO =
      """
      # Calculations

      Written from the calculations; `mvn -q -Pquick test -Dtest=CalculationDocsTest -Dupdate.docs` writes it anew.

          ./clampwise calc                    lists all calculations
          ./clampwise calc NAME               says what one asks for
          ./clampwise calc NAME KEY=VALUE...  runs it and shows its work

      Each line of the work has the symbol, the formula, the values put in, the result with its unit, the document with its clause, how the number was
      obtained (read, second-hand, from memory, worked out, common practice), and a note where a choice was made or a condition failed. Formulas are arithmetic that a pocket calculator
      can follow: `+ - * / ^`, `sqrt log10 ln exp sin cos tan min max abs`, angles in degrees, values in the units printed.

      Quantities are written with their unit, as in a job: `length=40ft`, `"length=31 ft 7 1/2 in"`, `pressure=30psf`, `slope=4:12`, `coldest=-22C`, `area=17.55ft2`. Several quantities are separated
      by commas, each with its unit: `supports=0m,1.2m,2.4m`. The work is printed in metric or imperial units, whichever most inputs were written in; `--units metric` and `--units imperial`
      decide otherwise. `--format json` prints one ASCII document of the shape `clampwise-calculation/1` with every value also in SI.

      Exit codes: 0 done; 2 wrong inputs, which are listed all at once, or inputs outside the validity of the calculation, which is refused with the reason. Data of codes stand in `shared/`,
      each table with document, edition, clause and how it was obtained; a line can be corrected there. No result is an engineer's approval.
      """;

  private CalculationsPage() {}

  static String text() {
    StringBuilder page = new StringBuilder(INTRO);
    list(page);
    cases(page);
    Calculations.all().forEach(calculation -> section(page, calculation));
    return page.toString();
  }

  private static void list(StringBuilder page) {
    page.append("\n## All\n\n| calculation | gives |\n|---|---|\n");
    for (Calculation calculation : Calculations.all()) {
      page.append("| [").append(calculation.name()).append("](#").append(calculation.name());
      page.append(") | ").append(calculation.title()).append(" |\n");
    }
  }

  private static void cases(StringBuilder page) {
    page.append(
        """

        ## Reference cases

        Published and worked cases with the command that reproduces each; a test holds every one within its printed digits. The text shows six digits, `--format json` all and SI as well, where a case is printed in another unit. Tags: *read* in a published text; *2nd* from a secondary text;
        *library* from a general library; *handbook* formula; *computed* worked out from marked inputs; *memory*.

        | case | command after `clampwise calc` | printed there |
        |---|---|---|
        """);
    Map<String, List<String>> values = new LinkedHashMap<>();
    for (ReferenceCase one : ReferenceCase.all()) {
      String head = "| " + one.source() + " | `" + one.typed() + "` | ";
      String value = one.symbol() + " = " + one.printed();
      values.computeIfAbsent(head, same -> new ArrayList<>()).add(value);
    }
    values.forEach((head, all) -> page.append(head).append(String.join(", ", all)).append(" |\n"));
  }

  private static void section(StringBuilder page, Calculation calculation) {
    page.append("\n## ").append(calculation.name()).append("\n\n").append(calculation.title());
    page.append(".\n\nHolds for: ").append(calculation.validity()).append(".\n");
    page.append("\n| input | what | expected | left out |\n|---|---|---|---|\n");
    calculation.inputs().forEach(input -> row(page, input));
    List<ReferenceCase> cases =
        ReferenceCase.all().stream()
            .filter(one -> one.calculation().equals(calculation.name()))
            .toList();
    if (!cases.isEmpty()) {
      page.append("\n    ./clampwise calc ").append(cases.get(0).typed()).append('\n');
    }
  }

  private static void row(StringBuilder page, Input input) {
    String unset =
        input.unset().map(text -> text.isEmpty() ? "nothing" : text).orElse("must be given");
    page.append("| `").append(input.name()).append("` | ").append(input.meaning());
    page.append(" | ").append(InputText.expected(input)).append(" | ").append(unset);
    page.append(" |\n");
  }
}
