package clampwise.calculation;

import java.util.List;

/** Cases of tolerances that add up and of right angles. */
final class AccuracyCases {

  private static final String TWENTY = "| tolerance-stack tolerance=2mm modules=20";

  static final List<String> ALL =
      List.of(
          "twenty modules at 2 mm, worst case [computed]" + TWENTY + "| w | 40 mm",
          "twenty modules at 2 mm, root of squares [computed]" + TWENTY + "| r | 8.9 mm",
          "twenty modules at 2 mm under clamps with 8 mm of slack [computed]"
              + TWENTY
              + " slack=8mm | k_w | 4",
          "the same, likely case [computed]" + TWENTY + " slack=8mm | k_r | 16",
          "3-4-5 in steps of 2 m [handbook]| square-corner along=6m up=8m | d | 10 m",
          "3-4-5 in steps of 3 m [handbook]| square-corner along=9m up=12m | d | 15 m",
          "right angle by 3-4-5 [handbook]| square-corner along=3m up=4m measured=5m | e | 0.000");

  private AccuracyCases() {}
}
