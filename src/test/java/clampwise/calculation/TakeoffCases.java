package clampwise.calculation;

import java.util.List;

/** Cases of crew time and pallets. */
final class TakeoffCases {

  private static final String FORTY = "| crew-time modules=40 attachments=100 clamps=100 jumpers=9";

  static final List<String> ALL =
      List.of(
          "forty modules at 90 s, placement only [computed]" + FORTY + "| t_p | 1.0 h",
          "seam clamps, clamps, jumpers, a lug and wiring beside it [computed]"
              + FORTY
              + "| T | 671.5 min",
          "40 modules, 26 a pallet [computed]| pallets modules=40 per-pallet=26 | P | 2",
          "72 modules, 36 a pallet [computed]| pallets modules=72 per-pallet=36 | P | 2",
          "36 modules of 21.5 kg and the pallet, 0.8 t [computed]"
              + "| pallets modules=72 per-pallet=36 module-mass=21.5kg | m_p | 814 kg");

  private TakeoffCases() {}
}
