package clampwise.calculation;

import java.util.List;

/** Samples of crew time and pallets. */
final class TakeoffSamples {

  static final List<String> ALL =
      List.of(
          "crew-time: modules=40; attachments=100; clamps=100; jumpers=9",
          "crew-time: modules=12; attachments=32; kind=rib-bracket; clamps=32; jumpers=3; lugs=2",
          "pallets: modules=100; per-pallet=31; module-mass=21.5 kg",
          "pallets: modules=74; per-pallet=26; module-mass=47 lb");

  private TakeoffSamples() {}
}
