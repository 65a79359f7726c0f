package clampwise.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.job.Shelf;
import clampwise.source.Problems;
import clampwise.units.Unit;
import org.junit.jupiter.api.Test;

class SharedDataTest {

  @Test
  void theCatalogueReadsWithoutProblems() {
    Problems problems = new Problems();
    Shelf shelf = CatalogueReader.shelf(problems).orElseThrow();
    assertThat(problems.sorted()).isEmpty();
    assertThat(shelf.modules().names()).contains("PV-108-30", "PV-144-35");
    assertThat(shelf.parts().seamClamps().names()).contains("SC-A", "SC-E");
  }

  @Test
  void everyListedPartOfAModuleIsInTheCatalogue() {
    Catalogue catalogue = CatalogueReader.read();
    assertThat(catalogue.modules().all())
        .flatExtracting(module -> module.value().listedWith().orElse(java.util.List.of()))
        .isNotEmpty()
        .extracting(Object::toString)
        .allMatch(
            name ->
                catalogue.attachment(name).isPresent()
                    || catalogue.parts().midClamps().names().contains(name)
                    || catalogue.parts().endClamps().names().contains(name));
  }

  @Test
  void everyLimitSaysWhereItComesFrom() {
    assertThat(LimitsReader.read().byKey().values())
        .isNotEmpty()
        .allSatisfy(
            limit -> {
              assertThat(limit.document()).isNotEmpty();
              assertThat(limit.obtained()).isNotEmpty();
              assertThat(limit.validity()).isNotEmpty();
            });
  }

  /** ASCE 7-16 29.4.4 gives the least gap as 0.25 in [second-hand]; 1 in is 25.4 mm. */
  @Test
  void theLeastModuleGapIsAQuarterInch() {
    assertThat(LimitsReader.read().get("module-gap-least").si()).isEqualTo(0.00635);
  }

  @Test
  void aThirdIsANumberAndNotASlope() {
    Limit share = LimitsReader.read().get("overhang-share-of-span-most");
    assertThat(share.unit()).isEqualTo(Unit.NUMBER);
    assertThat(share.si()).isEqualTo(1.0 / 3);
  }

  @Test
  void degreesAreAnAngle() {
    assertThat(LimitsReader.read().get("array-tilt-most").si()).isEqualTo(Math.toRadians(2));
  }
}
