package clampwise.facts.roof;

/** Says why the tests of a part cannot be held against a roof. */
final class TestReasons {

  private TestReasons() {}

  static String notMadeForIt(PartUse use) {
    return use.name() + " is not made for " + covering(use) + ", so its tests say nothing there";
  }

  static String noTest(PartUse use) {
    return use.ofPart("a test of " + use.name(), "tested");
  }

  static String noMetal(PartUse use) {
    return use.ofPanel("the metal of " + covering(use), "metal");
  }

  private static String covering(PartUse use) {
    return use.plane().panelName();
  }
}
