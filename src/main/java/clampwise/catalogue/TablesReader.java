package clampwise.catalogue;

import clampwise.MadeByBuild;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;
import clampwise.source.Node;
import clampwise.source.Problems;
import clampwise.source.YamlReader;
import clampwise.units.Dimension;
import clampwise.units.Parsed;
import clampwise.units.QuantityText;
import clampwise.units.Unit;
import clampwise.units.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads tables of codes that ship with the program. Each table states its source and its columns; a
 * column is a word such as {@code zone: word} or a quantity such as {@code area: ft²}, whose unit
 * holds for the whole column; {@code ~} is an empty cell.
 */
public final class TablesReader {

  private static final String ASCE_WIND = "asce-wind.yaml";
  private static final String ASCE_SNOW = "asce-snow.yaml";
  private static final String COMBINATIONS = "combinations.yaml";
  private static final String EN_WIND = "en-wind.yaml";
  private static final String EN_SNOW = "en-snow.yaml";
  private static final String STATICS = "statics.yaml";
  private static final String THERMAL = "thermal.yaml";
  private static final String ELECTRICAL = "electrical.yaml";
  private static final String DOCUMENTS = "documents.yaml";
  private static final String INSTALL = "install.yaml";
  private static final String METALS = "metals.yaml";

  private TablesReader() {}

  /** The tables of one file of the shared data. */
  public static Tables read(String file) {
    return switch (file) {
      case ASCE_WIND -> asceWind();
      case ASCE_SNOW -> asceSnow();
      case COMBINATIONS -> combinations();
      case EN_WIND -> enWind();
      case EN_SNOW -> enSnow();
      case STATICS -> statics();
      case THERMAL -> thermal();
      case ELECTRICAL -> electrical();
      case DOCUMENTS -> documents();
      case INSTALL -> install();
      case METALS -> metals();
      default -> shipped(file);
    };
  }

  @MadeByBuild
  private static Tables asceWind() {
    return shipped(ASCE_WIND);
  }

  @MadeByBuild
  private static Tables asceSnow() {
    return shipped(ASCE_SNOW);
  }

  @MadeByBuild
  private static Tables combinations() {
    return shipped(COMBINATIONS);
  }

  @MadeByBuild
  private static Tables enWind() {
    return shipped(EN_WIND);
  }

  @MadeByBuild
  private static Tables enSnow() {
    return shipped(EN_SNOW);
  }

  @MadeByBuild
  private static Tables statics() {
    return shipped(STATICS);
  }

  @MadeByBuild
  private static Tables thermal() {
    return shipped(THERMAL);
  }

  @MadeByBuild
  private static Tables electrical() {
    return shipped(ELECTRICAL);
  }

  @MadeByBuild
  private static Tables documents() {
    return shipped(DOCUMENTS);
  }

  @MadeByBuild
  private static Tables install() {
    return shipped(INSTALL);
  }

  @MadeByBuild
  private static Tables metals() {
    return shipped(METALS);
  }

  private static Tables shipped(String file) {
    return read(file, SharedData.text(file));
  }

  static Tables read(String name, String text) {
    Node root =
        YamlReader.read(name, text, new Problems())
            .orElseThrow(() -> new IllegalStateException(name + " is not readable"));
    Map<String, Table> tables = new LinkedHashMap<>();
    for (Node.Entry entry : ((Node.Mapping) root).entries()) {
      String key = entry.key().text();
      tables.put(key, table(key, (Node.Mapping) entry.value()));
    }
    return new Tables(tables);
  }

  private static Table table(String key, Node.Mapping written) {
    List<Column> columns = new ArrayList<>();
    for (Node.Entry entry : mapping(key, written, "columns").entries()) {
      columns.add(column(key, entry.key().text(), ((Node.Scalar) entry.value()).text()));
    }
    List<Table.Row> rows = new ArrayList<>();
    for (Node row : sequence(key, written, "rows").items()) {
      rows.add(row(key, columns, (Node.Sequence) row));
    }
    return new Table(key, source(written), rows);
  }

  private static Table.Row row(String key, List<Column> columns, Node.Sequence written) {
    if (written.items().size() != columns.size()) {
      throw new IllegalStateException("a row of " + key + " has not one cell a column");
    }
    Map<String, String> words = new LinkedHashMap<>();
    Map<String, Double> numbers = new LinkedHashMap<>();
    for (int i = 0; i < columns.size(); i++) {
      Column column = columns.get(i);
      String cell = ((Node.Scalar) written.items().get(i)).text();
      if (column.unit.isEmpty()) {
        words.put(column.name, cell);
      } else if (!cell.equals("~")) {
        numbers.put(column.name, column.unit.get().si(key, cell));
      }
    }
    return new Table.Row(words, numbers);
  }

  private record Column(String name, Optional<CellUnit> unit) {}

  private record CellUnit(Dimension dimension, Unit unit) {

    double si(String key, String cell) {
      if (QuantityText.parse(cell, dimension, Optional.of(unit)) instanceof Parsed.Value value) {
        return value.si();
      }
      throw new IllegalStateException("table " + key + " has an unreadable cell: " + cell);
    }
  }

  private static Column column(String key, String name, String unit) {
    if (unit.equals("word")) {
      return new Column(name, Optional.empty());
    }
    if (unit.equals("number")) {
      CellUnit plain = new CellUnit(Dimension.NUMBER, Unit.NUMBER);
      return new Column(name, Optional.of(plain));
    }
    for (Dimension dimension : Dimension.values()) {
      Optional<CellUnit> found = Units.find(dimension, unit).map(u -> new CellUnit(dimension, u));
      if (found.isPresent()) {
        return new Column(name, found);
      }
    }
    throw new IllegalStateException("table " + key + " has a column of unknown unit: " + unit);
  }

  private static Source source(Node.Mapping written) {
    return new Source(
        text(written, "document"),
        text(written, "edition"),
        text(written, "clause"),
        text(written, "obtained"),
        text(written, "validity"));
  }

  private static Node.Mapping mapping(String table, Node.Mapping written, String key) {
    return (Node.Mapping) child(table, written, key);
  }

  private static Node.Sequence sequence(String table, Node.Mapping written, String key) {
    return (Node.Sequence) child(table, written, key);
  }

  private static Node child(String table, Node.Mapping written, String key) {
    return written
        .get(key)
        .orElseThrow(() -> new IllegalStateException("table " + table + " has no " + key));
  }

  private static String text(Node.Mapping written, String key) {
    return written.get(key).map(node -> ((Node.Scalar) node).text()).orElse("");
  }
}
