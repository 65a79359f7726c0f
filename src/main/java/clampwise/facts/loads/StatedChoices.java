package clampwise.facts.loads;

import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Question;
import clampwise.facts.layout.Layout;
import clampwise.finding.Subject;
import clampwise.job.Flag;
import clampwise.job.Loads;
import clampwise.job.Quantity.Factor;
import clampwise.job.Site;
import clampwise.job.Written;
import clampwise.units.QuantityPrint;
import clampwise.units.Unit;
import java.util.Optional;

/** Lists what a job chooses where loads are open, and which side of the open point it takes. */
final class StatedChoices implements Question {

  @Override
  public void ask(Layout layout, Limits limits, Answers answers) {
    Optional<Loads> loads = layout.job().loads();
    boolean early =
        layout
            .job()
            .site()
            .flatMap(Site::codes)
            .flatMap(Site.Codes::loads)
            .filter(code -> code.value() == Site.LoadCode.ASCE_7_16)
            .isPresent();
    loads.flatMap(Loads::wind).ifPresent(wind -> new Choices(answers).ask(wind, early));
    loads.ifPresent(written -> new Choices(answers).ask(written));
    AnnexChoices.ask(
        layout.job(), layout.catalogue().codes(), given -> new Choices(answers).annex(given));
  }

  /** One open point: what it is about, and what stands when nothing is chosen. */
  private record Open(String key, String what, String instead) {}

  private record Choices(Answers answers) {

    void ask(Loads.WindReading wind, boolean early) {
      wind.exposedEdge()
          .ifPresent(
              chosen ->
                  add(
                      new Open(
                          "wind.exposed-edge",
                          "what makes a module exposed",
                          early ? "four-heights" : "severe"),
                      chosen,
                      chosen.toString(),
                      isMild(chosen.value(), early)));
      wind.edgeFactor().ifPresent(this::edgeFactor);
      wind.hipCurve()
          .ifPresent(
              chosen ->
                  add(
                      new Open(
                          "wind.hip-curve", "the end of the lines for hip roofs", "to-200-sq-ft"),
                      chosen,
                      chosen.toString(),
                      chosen.value() == Loads.HipCurve.TO_100_SQ_FT));
      wind.wallReduction()
          .ifPresent(
              flag -> flag(flag, new Open("wind.wall-reduction", "the reduction of walls", "no")));
    }

    void ask(Loads loads) {
      loads
          .clampsShareEdge()
          .ifPresent(
              flag ->
                  flag(
                      flag,
                      new Open("clamps-share-edge", "load shared by the clamps of an edge", "no")));
      loads
          .snow()
          .flatMap(Loads.Snow::slidesOff)
          .ifPresent(
              flag ->
                  flag(
                      flag,
                      new Open("snow.slides-off", "snow that slides off roof and array", "no")));
    }

    void annex(AnnexChoices.Given given) {
      Open open = new Open(given.key(), given.what(), given.instead());
      add(open, given.chosen(), text(given.chosen()), given.mild());
    }

    private static String text(Factor factor) {
      return QuantityPrint.text(factor.si(), factor.unit());
    }

    private void edgeFactor(Factor factor) {
      Open open =
          new Open(
              "wind.edge-factor", "the edge factor of every module", "what its place asks for");
      add(open, factor, text(factor), factor.value() <= 1);
    }

    private static boolean isMild(Loads.ExposedReading chosen, boolean early) {
      boolean usual = early && chosen == Loads.ExposedReading.FOUR_HEIGHTS;
      return !usual && chosen != Loads.ExposedReading.SEVERE;
    }

    private void flag(Flag flag, Open open) {
      add(open, flag, flag.value() ? "yes" : "no", flag.value());
    }

    private void add(Open open, Written value, String chosen, boolean mild) {
      Subject subject = Subject.of("loads", open.key);
      answers.add(
          new StatedChoice(
              subject,
              subject,
              value.at(),
              Unit.NUMBER,
              open.key,
              open.what,
              chosen,
              open.instead,
              mild));
    }
  }
}
