package clampwise.rulebook;

import clampwise.rulebook.build.RuleText;

/** Rules invented for these tests. */
final class GripRules {
  private GripRules() {}

  static RuleText tooTall(String severity) {
    return rule("frame-too-tall", severity, "$f : Grip(frameM > openM)");
  }

  static RuleText rule(String id, String severity, String left) {
    return new RuleText(
        "grips/" + id + ".drl",
        """
        package clampwise.rules.grips

        import clampwise.rulebook.Grip

        global clampwise.rulebook.Report report

        rule "%s"
          @title("Frame too tall, says \\"the clamp\\"")
          @severity("%s")
          @judges("Grip")
          @measured("frameM")
          @limit("openM")
          @message("the clamp opens to {openM}, the frame is {frameM}; also {others|no other}")
          @reason("It would not close.")
          @remedy("use {fitting|another clamp}")
          @basis("practice:clamp-grip, asce-7-16 29.4.4")
          @since("0.1")
        when
          %s
        then
          report.found(drools, $f);
        end
        """
            .formatted(id, severity, left));
  }
}
