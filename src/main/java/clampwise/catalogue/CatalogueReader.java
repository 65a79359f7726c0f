package clampwise.catalogue;

import clampwise.MadeByBuild;
import clampwise.job.Named;
import clampwise.job.Parts;
import clampwise.job.Shelf;
import clampwise.job.ShelfReader;
import clampwise.source.Problems;
import java.util.Optional;

/** Reads the catalogue that ships with the program. */
public final class CatalogueReader {

  private CatalogueReader() {}

  /** The invented parts and module types of the shared data. */
  public static Catalogue read() {
    return shelf().map(CatalogueReader::of).orElseGet(CatalogueReader::empty);
  }

  @MadeByBuild
  private static Optional<Shelf> shelf() {
    return shelf(new Problems());
  }

  static Optional<Shelf> shelf(Problems problems) {
    String parts = SharedData.text("parts.yaml");
    String modules = SharedData.text("modules.yaml");
    return ShelfReader.read(parts, modules, problems);
  }

  /** A catalogue with nothing in it, for jobs that write out all their parts. */
  public static Catalogue empty() {
    Parts none =
        new Parts(
            Named.none(),
            Named.none(),
            Named.none(),
            Named.none(),
            Named.none(),
            Named.none(),
            Named.none());
    return new Catalogue(none, Named.none());
  }

  private static Catalogue of(Shelf shelf) {
    return new Catalogue(shelf.parts(), shelf.modules());
  }
}
