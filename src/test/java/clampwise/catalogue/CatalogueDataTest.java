package clampwise.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.job.ModuleType;
import clampwise.job.ModuleType.Side;
import clampwise.job.Named.Item;
import clampwise.job.Quantity.Length;
import clampwise.job.RoofAttachment;
import clampwise.job.Tested;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The invented catalogue and the limits are of one piece. */
class CatalogueDataTest {

  private static final Catalogue CATALOGUE = CatalogueReader.read();

  @Test
  void everyModuleIsListedWithAMidAndAnEndClampThatGripItsFrame() {
    for (Item<ModuleType> module : CATALOGUE.modules().all()) {
      if (module.value().listedWith().isEmpty()) {
        continue;
      }
      double heightM = module.value().frameHeight().map(Length::m).orElseThrow();
      List<String> listed = names(module.value());
      assertThat(ClampFits.mid(CATALOGUE, heightM, true).names()).containsAnyElementsOf(listed);
      assertThat(ClampFits.end(CATALOGUE, heightM, false).names()).containsAnyElementsOf(listed);
    }
  }

  @Test
  void clampZonesLieWithinHalfTheirSide() {
    assertThat(CATALOGUE.modules().all()).isNotEmpty();
    for (Item<ModuleType> module : CATALOGUE.modules().all()) {
      for (ModuleType.ClampZone zone : module.value().clampZones()) {
        boolean longSide = zone.side().value() == Side.LONG;
        double sideM = (longSide ? module.value().length() : module.value().width()).m();
        assertThat(zone.zone().max().m()).as(module.name().value()).isLessThan(sideM / 2);
      }
    }
  }

  @Test
  void aNarrowerClampZoneNeverHasTheLowerRating() {
    for (Item<ModuleType> module : CATALOGUE.modules().all()) {
      List<ModuleType.ClampZone> zones =
          module.value().clampZones().stream().filter(z -> z.side().value() == Side.LONG).toList();
      for (int i = 1; i < zones.size(); i++) {
        assertThat(widthM(zones.get(i))).isGreaterThan(widthM(zones.get(i - 1)));
        assertThat(zones.get(i).down().orElseThrow().pa())
            .isLessThanOrEqualTo(zones.get(i - 1).down().orElseThrow().pa());
      }
    }
  }

  /** Sizes of handbook table 2.9: the 108 half-cell class is 1722 mm by 1134 mm [memory]. */
  @Test
  void theHalfCellModuleHasTheSizeOfItsClass() {
    ModuleType module = CATALOGUE.modules().find("PV-108-30").orElseThrow();
    assertThat(module.length().m()).isCloseTo(1.722, within(1e-9));
    assertThat(module.width().m()).isCloseTo(1.134, within(1e-9));
  }

  @Test
  void noTestIsOnThinnerSheetThanThePartMayHoldTo() {
    attachments()
        .forEach(
            part ->
                part.tested()
                    .forEach(
                        row ->
                            assertThat(thicknessM(row))
                                .isGreaterThanOrEqualTo(leastM(part, row) - 1e-7)));
  }

  @Test
  void everyTestStatesItsLoadsItsBasisAndItsSafetyFactor() {
    assertThat(attachments().flatMap(part -> part.tested().stream()))
        .isNotEmpty()
        .allSatisfy(
            row -> {
              assertThat(row.up()).isPresent();
              assertThat(row.down()).isPresent();
              assertThat(row.along()).isPresent();
              assertThat(row.loadsAre()).isPresent();
              assertThat(row.safetyFactor()).isPresent();
            });
  }

  @Test
  void everyDocumentOfALimitIsInTheReferences() throws IOException {
    String references = Files.readString(Path.of("shared", "references.bib"));
    assertThat(limits()).allMatch(limit -> references.contains("{" + limit.document() + ","));
  }

  @Test
  void limitsSayInKnownWordsHowTheyWereObtained() {
    assertThat(limits())
        .isNotEmpty()
        .extracting(Limit::obtained)
        .isSubsetOf(
            "read", "second-hand", "from memory", "worked out", "common practice, no source");
  }

  private static List<Limit> limits() {
    return Stream.of(LimitsReader.read(), LimitsReader.fire())
        .flatMap(limits -> limits.byKey().values().stream())
        .toList();
  }

  private static Stream<RoofAttachment> attachments() {
    return Stream.concat(
            CATALOGUE.parts().seamClamps().all().stream(),
            CATALOGUE.parts().ribBrackets().all().stream())
        .map(Item::value);
  }

  private static double thicknessM(Tested row) {
    return SheetThickness.baseM(row.thickness().orElseThrow(), row.metal().value()).orElseThrow();
  }

  private static double leastM(RoofAttachment part, Tested row) {
    return part.thicknessAtLeast()
        .flatMap(least -> SheetThickness.baseM(least, row.metal().value()))
        .orElse(0.0);
  }

  private static double widthM(ModuleType.ClampZone zone) {
    return zone.zone().max().m() - zone.zone().min().m();
  }

  private static List<String> names(ModuleType module) {
    return module.listedWith().orElseThrow().stream().map(Object::toString).toList();
  }
}
