package clampwise.facts.movement;

import clampwise.facts.layout.FieldLayout;
import clampwise.job.Flag;
import clampwise.job.ModuleClamp;
import clampwise.job.Quantity.Length;
import clampwise.job.Text;
import clampwise.job.Unreadable;
import clampwise.source.Span;
import java.util.Optional;

/**
 * The mid clamp that ties the modules of a field's columns.
 *
 * @param name its name, if one is given
 * @param clamp the part, if it is known
 */
record HoldingClamp(
    FieldLayout field, Optional<Text> name, Optional<ModuleClamp> clamp, Unreadable unreadable) {

  static HoldingClamp of(MovingPlane moving, FieldLayout field) {
    return new HoldingClamp(
        field, field.field().midClamp(), field.midClamp(), moving.layout().job().unreadable());
  }

  /** Whether frames slide in it; empty if that is not known. A clamp that says nothing holds. */
  Optional<Boolean> slides() {
    return isLost("slides")
        ? Optional.empty()
        : clamp.map(part -> part.slides().filter(Flag::value).isPresent());
  }

  String slidesUnknown() {
    return name.isEmpty() || clamp.isEmpty()
        ? unnamed()
        : "whether frames slide in mid clamp " + word() + " could not be read";
  }

  /** What it takes up at each joint. */
  Optional<Length> slack() {
    return clamp.flatMap(ModuleClamp::slack);
  }

  String slackUnknown() {
    return name.isEmpty() || clamp.isEmpty()
        ? unnamed()
        : unreadable.missing(
            "the slack of mid clamp " + word(), "parts", "mid-clamps", word(), "slack");
  }

  String word() {
    return name.map(Text::value).orElse("");
  }

  Span at() {
    return name.map(Text::at).orElse(field.at());
  }

  private String unnamed() {
    return unreadable.unwritten(
        "field " + field.name() + " names no known mid clamp",
        "the mid clamp of field " + field.name(),
        "fields",
        field.name(),
        "mid-clamp");
  }

  private boolean isLost(String key) {
    return unreadable.touches("parts", "mid-clamps", word(), key);
  }
}
