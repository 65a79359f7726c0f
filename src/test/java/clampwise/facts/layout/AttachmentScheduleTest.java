package clampwise.facts.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.facts.layout.Attachment.Kind;
import clampwise.facts.layout.Grip.Half;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Attachments of the ways a schedule can be written. */
class AttachmentScheduleTest {

  private final Jobs job = new Jobs();

  /** Handbook example 3.9 [computed]: 4 x 10 modules, two clamps on each module edge. */
  @Test
  void twoClampsAnEdgeOnFourByTenModulesMakeFiveLinesAndAHundredAttachments() {
    job.pitchMm = 304.8;
    job.seams = Optional.of(Jobs.nominal(0, 304.8));
    job.block = Optional.of(Jobs.block(600, 1000, 4, 10));
    job.attach = Optional.of(Jobs.perEdge(2));
    FieldLayout field = job.field();

    assertThat(field.lines()).hasSize(5);
    assertThat(field.attachments()).hasSize(100);
    assertThat(field.attachments()).filteredOn(a -> a.kind() == Kind.END).hasSize(40);
    assertThat(field.attachments()).filteredOn(a -> a.kind() == Kind.MID).hasSize(60);
    assertThat(field.edges()).hasSize(80).allMatch(edge -> edge.attachments().size() == 2);
    assertThat(job.found()).isEmpty();
  }

  @Test
  void aLineBetweenTwoRowsLiesInTheMiddleOfTheirGap() {
    job.block = Optional.of(Jobs.block(600, 1000, 2, 3));
    job.attach = Optional.of(Jobs.perEdge(2));

    assertThat(job.field().lines()).containsExactly(1.0, 2.14, 3.28);
  }

  @Test
  void anOmittedModuleLeavesEndClampsOnTheSameLines() {
    job.block = Optional.of(Jobs.block(600, 1000, 3, 2, "R2C2"));
    job.attach = Optional.of(Jobs.perEdge(2));
    FieldLayout field = job.field();

    assertThat(field.lines()).hasSize(4);
    assertThat(field.attachments()).filteredOn(a -> a.kind() == Kind.MID).hasSize(4);
    assertThat(field.attachments()).filteredOn(a -> a.kind() == Kind.END).hasSize(12);
  }

  @Test
  void aPointServesTheModulesBelowAndAboveItsLine() {
    job.block = Optional.of(Jobs.block(600, 1000, 2, 1));
    job.attach = Optional.of(Jobs.points(800, 1000, 850, 2136, 860, 5000));
    List<Attachment> attachments = job.field().attachments();

    assertThat(attachments)
        .extracting(Attachment::name)
        .containsExactly("A point 3", "A point 1", "A point 2");
    assertThat(attachments)
        .extracting(Attachment::kind)
        .containsExactly(Kind.NONE, Kind.END, Kind.MID);
    assertThat(attachments).extracting(Attachment::line).containsExactly(0, 1, 2);
    assertThat(attachments.get(2).offsetM()).isEqualTo(0.05, within(1e-9));
    assertThat(attachments.get(2).grips())
        .extracting(g -> g.module().name())
        .containsExactly("A.R1C1", "A.R2C1");
  }

  @Test
  void aGripIsMeasuredFromTheNearerCorner() {
    job.block = Optional.of(Jobs.block(600, 1000, 1, 1));
    job.attach = Optional.of(Jobs.lines(Map.of("1", List.of(3, 6))));
    List<Attachment> attachments = job.field().attachments();

    Grip left = attachments.get(0).grips().get(0);
    Grip right = attachments.get(1).grips().get(0);
    assertThat(attachments)
        .extracting(Attachment::name)
        .containsExactly("A.L1 seam 3", "A.L1 seam 6");
    assertThat(left.fromCornerM()).isEqualTo(0.2);
    assertThat(left.half()).isEqualTo(Half.LEFT);
    assertThat(right.fromLeftM()).isEqualTo(1.4);
    assertThat(right.fromCornerM()).isEqualTo(0.322);
    assertThat(right.half()).isEqualTo(Half.RIGHT);
    assertThat(right.row()).isPresent();
  }

  @Test
  void seamsForAllLinesAreOnlyUsedWhereTheLineHasModules() {
    job.columns = List.of();
    job.block = Optional.of(Jobs.block(600, 1000, 2, 2, "R2C2"));
    job.attach = Optional.of(Jobs.lines(Map.of("all", List.of(3, 8))));

    assertThat(job.field().attachments())
        .extracting(Attachment::name)
        .containsExactly("A.L1 seam 3", "A.L1 seam 8", "A.L2 seam 3", "A.L2 seam 8", "A.L3 seam 3");
  }

  @Test
  void aSeamOrLineThatIsNotThereIsReported() {
    job.block = Optional.of(Jobs.block(600, 1000, 1, 1));
    job.attach = Optional.of(Jobs.lines(Map.of("1", List.of(99), "7", List.of(3))));
    job.field();

    assertThat(job.found()).containsExactly("line 7; field A has 2 lines", "seam 99");
  }

  @Test
  void everySecondSeamCountsFromTheFirstThatCrossesTheField() {
    job.block = Optional.of(Jobs.block(600, 1000, 1, 2));
    job.attach = Optional.of(Jobs.every(2));

    assertThat(job.field().attachments())
        .filteredOn(a -> a.line() == 1)
        .extracting(a -> a.seam().orElseThrow().number())
        .containsExactly(3, 5, 7, 9, 11);
  }

  @Test
  void aScheduleByZoneWithoutKnownZonesLeavesTheAttachmentsUnknown() {
    job.block = Optional.of(Jobs.block(600, 1000, 1, 2));
    job.attach = Optional.of(Jobs.byZone(Map.of("field", 2)));

    assertThat(job.field().attachmentsUnknown().orElseThrow())
        .startsWith("the schedule goes by wind zone, and ");
    assertThat(job.field().attachments()).isEmpty();
  }

  @Test
  void withoutASeamInTheClampZoneTheNearestSeamsAreTaken() {
    job.module = Jobs.module(1722, 1134, Jobs.zone(234, 236, 3600));
    job.block = Optional.of(Jobs.block(600, 1000, 1, 1));
    job.attach = Optional.of(Jobs.perEdge(2));
    List<Attachment> attachments = job.field().attachments();

    assertThat(attachments)
        .filteredOn(a -> a.line() == 1)
        .extracting(a -> a.grips().get(0).fromCornerM())
        .containsExactly(0.2, 0.322);
    assertThat(attachments).allMatch(a -> a.grips().get(0).row().isEmpty());
  }
}
