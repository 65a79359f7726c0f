package clampwise.report;

/** Marks a stretch of text for its role; what cannot show colours uses {@link #NONE}. */
@FunctionalInterface
public interface Paint {

  Paint NONE = (role, text) -> text;

  /** The text with whatever marks its role. */
  String paint(Role role, String text);
}
