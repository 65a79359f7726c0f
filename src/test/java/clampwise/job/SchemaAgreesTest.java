package clampwise.job;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.source.Node;
import clampwise.source.Problems;
import clampwise.source.YamlReader;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Schema and reader accept and refuse the same files. What only the reader can see is listed in
 * {@link #ONLY_THE_READER}.
 */
class SchemaAgreesTest {

  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(JobSchema.text(), InputFormat.JSON);

  private static final String FIELD = "fields: {A: {plane: p, module: m, orientation: portrait";

  /** One value against another, and ranges of what a pattern only sees as text. */
  private static final List<String> ONLY_THE_READER =
      List.of(
          "building: {length: 0 in}",
          "building: {length: 99999 m}",
          "site: {topographic-factor: 0.5}",
          "loads: {wind: {edge-factor: 1.2}}",
          "claims: {pressures: {edgy: {up: 24 psf}}}",
          "planes: {p: {panel: r, slope: 95 deg}}",
          "planes: {p: {panel: r, size: 30 psf x 3 kg}}",
          "planes: {p: {panel: r, azimuth: 400 deg}}",
          "parts: {mid-clamps: {M: {frame-height: 40 mm to 30 mm}}}",
          "fields: {A: {like: B}}",
          FIELD + ", block: {at: [1 m, 1 m], rows: 9999, columns: 9999}}}",
          "building: {length: 2 in 3 ft}",
          "planes: {p: {panel: r, seams: {survey-file: gone.csv}}}",
          "bonding: {jumpers: [{from: A.R1C1}]}",
          "bonding: {jumpers: [{part: J}]}",
          "planes: {p: {panel: r, size: 9 m x 9 m, outline: [{at: [1 m, 2 m], edge: eave}]}}",
          FIELD + ", attach: {per-edge: 2, from: 3}}}");

  static Stream<Path> examples() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("examples"))) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("examples")
  void examplesAreAcceptedByBoth(Path file) throws IOException {
    assertThat(errors(Files.readString(file))).isEmpty();
    Problems problems = new Problems();
    assertThat(JobReader.read(file, problems)).isPresent();
    assertThat(problems.sorted()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "revision: 2",
        "revision: ~",
        "survey:",
        "panels:",
        "units: {length: mm}\nbuilding: {length: 30000, eave-height: 7/8, width: 3 m}",
        "units: {pressure: psf}\nsite: {ground-snow: 30}",
        "units: {angle: deg}\nplanes: {p: {panel: r, slope: 18, size: 30 m x 9 m}}",
        "units: {mass: kg, length: mm}\nmodules: {m: {length: 1722, width: 1134, mass: 21}}",
        "units: {force: N}\nparts: {seam-clamps: {S: {tested: [{metal: steel, up: 520}]}}}",
        "units: {length: mm}\nplanes: {p: {panel: r, size: 30000 x 9000, end-laps: [3000]}}",
        "building: {length: 31'-7 1/2\", width: \"31' 7½\\\"\", eave-height: \"1,722 mm\"}",
        "building: {length: 30 Metres, width: 12.5ft, eave-height: 1/2 in}",
        "site: {wind-speed: 115 MPH, ground-snow: 1.5 kN/m², lowest-temperature: -22 °C}",
        "site: {lowest-temperature: -8 F, corrosivity: C3, codes: {loads: asce-7-22}}",
        "site: {exposure: C, risk-category: III}",
        "site: {terrain: 0, risk-category: \"II\"}",
        "site: {terrain: \"0\"}",
        "site: {terrain: IV}",
        "planes: {p: {panel: r, slope: 4:12, azimuth: 180°, size: 100 ft x 31 ft 7 1/2 in}}",
        "planes: {p: {panel: r, slope: 18.5 deg, size: [30 m, 9 m], end-laps: [3 m, 6 m]}}",
        "planes: {p: {panel: r, slope: 33 %, size: 30 x 9 m}}",
        "planes: {p: {panel: r, outline: [{at: [-1 m, 0 m], edge: eave}]}}",
        "planes: {p: {panel: r, seams: {surveyed: [231 mm, 690 mm], first: -3 mm}}}",
        "panels: {r: {kind: standing-seam, thickness: 24 ga}}",
        "panels: {r: {kind: trapezoidal, thickness: 0.6 mm, assumed: [pitch]}}",
        "parts: {mid-clamps: {M: {frame-height: 30 mm to 40 mm, bonding: yes, torque: 17 N m}}}",
        "parts: {mid-clamps: {M: {frame-height: 30-40 mm, bonding: false, torque: 150 lbf in}}}",
        "parts: {mid-clamps: {M: {frame-height: 30 to 40 mm, torque: 10 ft-lb}}}",
        "parts: {mid-clamps: {M: {frame-height: [30 mm, 40 mm], bonding: \"no\"}}}",
        "parts: {lugs: {L: {wire-at-least: 6 AWG, wire-at-most: 1/0 AWG}}}",
        "parts: {lugs: {L: {wire-at-least: 16 mm², wire-at-most: 250 kcmil}}}",
        "parts: {seam-clamps: {S: {tested: [{metal: steel, up: 520 lbf, safety-factor: 2.5}]}}}",
        "modules: {m: {length: 1722 mm, width: 1134 mm, mass: 21.5 kg, listed-with: [a, b]}}",
        FIELD + "}}",
        FIELD + "}, B: {like: A, gap: ~}}",
        FIELD + ", block: {at: \"6 ft, 3 ft\", rows: 4, columns: \"7\", omit: [R1C1]}}}",
        FIELD + ", columns: [{modules: 5, omit: [2]}]}}",
        FIELD + ", attach: {lines: {all: [3, 6], 1: [3, 5]}, zones: {field: 2}}}}",
        FIELD + ", attach: {lines: {all: [3], 2: []}}}}",
        "planes: {p: {panel: r, end-laps: []}}",
        "bonding: {jumpers: [], lugs: []}",
        "claims: {modules: 0, zone-width: 6 ft}",
        "claims: {pressures: {2e: {up: 24 psf}}, pressures-are: service, edge-factor: 1.5}",
        "claims: {tributary: {inner-line: 15 ft2, edge-line: 0.7 m²}, equalisation-area: 21 sqft}"
      })
  void goodTextsAreAcceptedByBoth(String snippet) {
    assertThat(problems(snippet)).isEmpty();
    assertThat(errors(job(snippet))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "revison: B",
        "units: {length: furlong}",
        "units: {speed: mph}",
        "building: {length: 30}",
        "building: {length: 30 psf}",
        "building: {length: -3 m}",
        "building: {length: [3 m]}",
        "building: {roof: gabled}",
        "building: [gable]",
        "units: {length: mm}\nbuilding: {length: -3}",
        "units: {length: mm}\nsite: {wind-speed: 50}",
        "units: {length: mm}\nsite: {ground-snow: 30}",
        "units: {length: ~}\nbuilding: {length: 3}",
        "units: {angle: deg}\nbuilding: {length: 3}",
        "units: {angle: deg}\nplanes: {p: {panel: r, size: 30 x 9}}",
        "units: {angle: deg}\nplanes: {p: {panel: r, end-laps: [3]}}",
        "units: {angle: deg}\nfields: {A: {like: B, gap: 12}, B: {like: A}}",
        "units: {length: mm}\nplanes: {p: {panel: r, slope: 18}}",
        "units: {length: mm}\nmodules: {m: {length: 1722, width: 1134, mass: 21}}",
        "units: {length: mm}\nparts: {seam-clamps: {S: {tested: [{metal: steel, up: 520}]}}}",
        "site: {wind-speed: 115}",
        "site: {ground-snow: 30 ft}",
        "site: {corrosivity: c3}",
        "site: {exposure: II}",
        "site: {terrain: C}",
        "site: {terrain: 1}",
        "site: {risk-category: 2}",
        "site: {lowest-temperature: -22}",
        "planes: {p: {slope: 4:12}}",
        "planes: {p: {panel: r, slope: 4 in}}",
        "planes: {p: {panel: r, size: 30 m}}",
        "planes: {p: {panel: r, size: 30 x 9}}",
        "planes: {p: {panel: r, outline: [{at: [1 m, 2 m, 3 m], edge: eave}]}}",
        "planes: {p: {panel: r, outline: {at: [1 m, 2 m], edge: eave}}}",
        "planes: {p: {panel: r, obstructions: [{kind: vent, at: [1 m, 2 m]}]}}",
        "planes: {p: ~}",
        "panels: {r: {kind: standing-seam, thickness: 24}}",
        "parts: {mid-clamps: {M: {frame-height: 30 mm}}}",
        "parts: {mid-clamps: {M: {bonding: maybe}}}",
        "parts: {mid-clamps: {M: {torque: 17 mm}}}",
        "parts: {lugs: {L: {wire-at-least: 6}}}",
        "parts: {seam-clamps: {S: {tested: [{up: 520 lbf}]}}}",
        "parts: {seam-clamps: {S: {tested: [~]}}}",
        "modules: {m: {length: 1722 mm}}",
        "modules: {m: 1722 mm}",
        "fields: {A: {plane: p, module: m}}",
        "fields: {A: {plane: p, module: ~, orientation: portrait}}",
        FIELD + ", block: {at: [1 m, 1 m], rows: 0, columns: 3}}}",
        FIELD + ", block: {at: [1 m, 1 m], rows: 2.5, columns: 3}}}",
        FIELD + ", block: {at: [1 m, 1 m], rows: 99999999, columns: 3}}}",
        FIELD + ", block: {at: [1, 1], rows: 2, columns: 3}}}",
        FIELD + ", attach: {every: 0}}}",
        FIELD + ", attach: {per-edge: 0}}}",
        FIELD + ", columns: []}}",
        FIELD + ", gap: {a: 3 mm}}}",
        "planes: {p: {panel: r, seams: {count: 0}}}",
        "planes: {p: {panel: r, seams: {surveyed: []}}}",
        "claims: {modules: -1}"
      })
  void badTextsAreRefusedByBoth(String snippet) {
    assertThat(problems(snippet)).isNotEmpty();
    assertThat(errors(job(snippet))).isNotEmpty();
  }

  @Test
  void aJobWithoutANameIsRefusedByBoth() {
    Problems problems = new Problems();
    JobReader.read("job.yaml", "revision: B", problems);
    assertThat(problems.sorted()).isNotEmpty();
    assertThat(errors("revision: B")).isNotEmpty();
  }

  @Test
  void theReaderSeesMoreThanTheSchemaOnlyWhereListed() {
    for (String snippet : ONLY_THE_READER) {
      assertThat(problems(snippet)).as(snippet).isNotEmpty();
      assertThat(errors(job(snippet))).as(snippet).isEmpty();
    }
  }

  private static String job(String snippet) {
    return "job: A roof\n" + snippet;
  }

  private static List<?> problems(String snippet) {
    Problems problems = new Problems();
    JobReader.read("job.yaml", job(snippet), problems);
    return problems.sorted();
  }

  private static List<Error> errors(String text) {
    Node node = YamlReader.read("job.yaml", text, new Problems()).orElseThrow();
    return SCHEMA.validate(Snippets.json(node));
  }
}
