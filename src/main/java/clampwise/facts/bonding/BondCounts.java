package clampwise.facts.bonding;

import clampwise.facts.layout.Layout;
import clampwise.job.Bonding;
import clampwise.job.Bonding.Jumper;
import clampwise.job.Text;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * How many jumpers and lugs the bonding takes on this layout, by part; the part is empty where none
 * is named.
 *
 * @param unknown why they cannot be counted, if they cannot
 */
public record BondCounts(
    Map<String, Integer> jumpers, Map<String, Integer> lugs, Optional<String> unknown) {

  /** The jumpers and lugs of a layout. */
  public static BondCounts of(Layout layout, Bonding bonding) {
    Map<String, Integer> jumpers = new TreeMap<>();
    Map<String, Integer> lugs = new TreeMap<>();
    Joints joints = new Joints(new Frames(layout), BondParts.of(layout, bonding));
    for (Jumper jumper : bonding.jumpers()) {
      int ties = (int) joints.tied(jumper).count();
      jumpers.merge(name(jumper.part().or(bonding::jumper)), ties, Integer::sum);
    }
    bonding.lugs().forEach(lug -> lugs.merge(name(lug.part().or(bonding::lug)), 1, Integer::sum));
    return new BondCounts(jumpers, lugs, Unread.all(layout));
  }

  private static String name(Optional<Text> part) {
    return part.map(Text::value).orElse("");
  }
}
