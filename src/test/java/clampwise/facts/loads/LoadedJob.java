package clampwise.facts.loads;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.Result;
import clampwise.catalogue.CatalogueReader;
import clampwise.catalogue.LimitsReader;
import clampwise.facts.Derivation;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlaneLayout;
import clampwise.job.JobReader;
import clampwise.source.Node;
import clampwise.source.Overlay;
import clampwise.source.Problems;
import clampwise.source.YamlReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The standing seam job of the rules with more laid over it, and the loads of its field. */
final class LoadedJob {

  private final PlaneLoads plane;

  private LoadedJob(PlaneLoads plane) {
    this.plane = plane;
  }

  static LoadedJob seams(String over) {
    Problems problems = new Problems();
    Node root = tree(problems);
    Node more = YamlReader.read("more", over, problems).orElse(root);
    Layout layout =
        JobReader.read("seam-roof", Overlay.lay(root, more), problems)
            .map(job -> Derivation.of(job, CatalogueReader.empty(), LimitsReader.read(), problems))
            .orElseThrow()
            .layout();
    assertThat(problems.sorted()).isEmpty();
    PlaneLayout first = layout.planes().get(0);
    List<Outcome<LoadedField>> fields =
        first.fields().stream()
            .map(field -> new FieldSite(layout, first, field, LimitsReader.read()))
            .map(FieldLoads::of)
            .<Outcome<LoadedField>>map(
                loads -> loads.then(known -> new Result<>(LoadedField.of(known))))
            .toList();
    return new LoadedJob(PlaneLoads.of(layout.job(), first, LimitsReader.read(), fields));
  }

  PlaneLoads plane() {
    return plane;
  }

  LoadedField field() {
    return plane.fields().get(0);
  }

  /** Uplift of an attachment in a combination. */
  double upliftN(int attachment, int combination) {
    return field()
        .forces(field().field().attachments().get(attachment))
        .result()
        .orElseThrow()
        .get(combination)
        .normalN();
  }

  /** The largest uplift on any module [Pa]. */
  double mostUpliftPa() {
    return field().field().modules().stream()
        .map(field().loads()::of)
        .flatMap(load -> java.util.Arrays.stream(load.upPa()).boxed())
        .mapToDouble(pa -> -pa)
        .max()
        .orElseThrow();
  }

  private static Node tree(Problems problems) {
    try {
      String text = Files.readString(Path.of("rules/base/seam-roof.yaml"));
      return YamlReader.read("seam-roof", text, problems).orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
