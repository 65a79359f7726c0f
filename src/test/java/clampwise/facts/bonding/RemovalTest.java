package clampwise.facts.bonding;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.facts.layout.PlacedModule;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Random layouts: what the program says of a graph against trying it out, part by part. */
class RemovalTest {

  @Test
  void theWalkFindsWhatEachModuleCutsOffAsTakingItOutDoes() {
    for (int seed = 0; seed < 200; seed++) {
      RandomBonding layout = new RandomBonding(new Random(seed), 7, 6);
      PlainGraph plain = new PlainGraph(layout);
      BondGraph graph = layout.graph();
      Cuts cuts = new Cuts(Net.of(graph, false));
      for (PlacedModule frame : graph.frames().all()) {
        assertThat(cuts.by(frame))
            .as("seed %d, %s", seed, frame.name())
            .isEqualTo(plain.cutOffBy(frame.name()));
      }
    }
  }

  @Test
  void mirroredColumnsCutOffTheSame() {
    for (int seed = 0; seed < 100; seed++) {
      RandomBonding layout = new RandomBonding(new Random(seed), 7, 6);
      assertThat(cuts(layout.mirrored())).as("seed %d", seed).isEqualTo(cuts(layout));
    }
  }

  private static List<Integer> cuts(RandomBonding layout) {
    BondGraph graph = layout.graph();
    Cuts cuts = new Cuts(Net.of(graph, false));
    return graph.frames().all().stream().map(cuts::by).sorted().toList();
  }

  @Test
  void withThePartsThatAreAskedForNoModuleCutsOthersOff() {
    for (int seed = 0; seed < 200; seed++) {
      RandomBonding layout = new RandomBonding(new Random(seed), 9, 6);
      PlainGraph closed = new PlainGraph(layout).with(asked(Closing.of(layout.graph())));
      assertThat(closed.holdsWithoutAny()).as("seed %d", seed).isTrue();
    }
  }

  @Test
  void smallLayoutsAreClosedWithTheFewestParts() {
    for (int seed = 0; seed < 250; seed++) {
      RandomBonding layout = new RandomBonding(new Random(seed), 4, 3);
      int fewest = new PlainGraph(layout).fewest(candidates(layout));
      assertThat(asked(Closing.of(layout.graph()))).as("seed %d", seed).hasSize(fewest);
    }
  }

  /**
   * Seven columns of four on a lug in their middle: seven ends and ground make four parts at best,
   * but four in pairs leave one side or the middle column on the module with the lug [computed].
   */
  @Test
  void columnsOnALugInTheirMiddleTakeFiveParts() {
    RandomBonding layout = RandomBonding.chain(7, 4, 4);
    PlainGraph closed = new PlainGraph(layout).with(asked(Closing.of(layout.graph())));

    assertThat(asked(Closing.of(layout.graph()))).hasSize(5);
    assertThat(closed.holdsWithoutAny()).isTrue();
  }

  /** What ground takes first, then what is asked on top of it: one pass, and no smaller second. */
  @Test
  void afterBothRemediesAllFramesAreGroundedAndNoneHangsOnAnother() {
    for (int seed = 0; seed < 150; seed++) {
      RandomBonding layout = new RandomBonding(new Random(seed), 4, 3);
      List<Island> islands = layout.graph().islands();
      List<Island> cut = islands.stream().filter(island -> !island.isGrounded()).toList();
      BondGraph graph = layout.graph();
      BondGraph healed = new Healing(graph.frames(), islands).healed(graph, cut);
      PlainGraph grounded = new PlainGraph(layout).with(healing(graph));
      List<List<String>> more = asked(Closing.of(healed));

      assertThat(grounded.with(more).grounded()).as("seed %d", seed).hasSameSizeAs(layout.frames);
      assertThat(grounded.with(more).holdsWithoutAny()).as("seed %d", seed).isTrue();
      assertThat(more).as("seed %d", seed).hasSize(grounded.fewest(allCandidates(layout)));
    }
  }

  /**
   * Columns of one height, tied at one end: leaves and ground, halved and rounded up [computed].
   */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6})
  void columnsInAChainAreClosedWithTheFewestParts(int columns) {
    RandomBonding layout = RandomBonding.chain(columns, 2);
    int asked = asked(Closing.of(layout.graph())).size();
    assertThat(asked).isEqualTo((columns + 2) / 2);
    assertThat(asked).isEqualTo(new PlainGraph(layout).fewest(candidates(layout)));
  }

  /** One part for each island without ground, and no smaller set grounds all. */
  @Test
  void islandsAreHealedWithTheFewestParts() {
    for (int seed = 0; seed < 80; seed++) {
      RandomBonding layout = new RandomBonding(new Random(seed), 4, 3);
      PlainGraph plain = new PlainGraph(layout);
      List<List<String>> healing = healing(layout.graph());
      PlainGraph healed = plain.with(healing);
      assertThat(healed.grounded()).as("seed %d", seed).hasSameSizeAs(layout.frames);
      assertThat(healing).hasSize(plain.fewestToGround(allCandidates(layout)));
    }
  }

  private static List<List<String>> healing(BondGraph graph) {
    List<Island> islands = graph.islands();
    Healing healing = new Healing(graph.frames(), islands);
    return islands.stream()
        .filter(island -> !island.isGrounded())
        .map(island -> part(healing.jumper(island), island))
        .toList();
  }

  private static List<String> part(Optional<Tie> tie, Island island) {
    return tie.map(RemovalTest::names).orElseGet(() -> List.of(island.first().name()));
  }

  private static List<String> names(Tie tie) {
    return List.of(tie.one().name(), tie.other().name());
  }

  private static List<List<String>> asked(Closing closing) {
    Stream<List<String>> jumpers = closing.jumpers().stream().map(RemovalTest::names);
    return Stream.concat(jumpers, closing.lugs().stream().map(lug -> List.of(lug.name()))).toList();
  }

  /** A jumper between any two neighbours, a lug on any frame. */
  private static List<List<String>> allCandidates(RandomBonding layout) {
    List<List<String>> all = new ArrayList<>(layout.beside());
    layout.frames.forEach(frame -> all.add(List.of(frame)));
    return all;
  }

  private static List<List<String>> candidates(RandomBonding layout) {
    Set<String> grounded = new PlainGraph(layout).grounded();
    return allCandidates(layout).stream().filter(grounded::containsAll).toList();
  }
}
