package clampwise.facts;

import clampwise.facts.layout.PlacedModule;
import clampwise.finding.Subject;

/** Names what facts are about, the same way everywhere. */
public final class Subjects {

  private Subjects() {}

  /** A field, such as {@code fields.A}. */
  public static Subject field(String name) {
    return Subject.of("fields." + name);
  }

  /** A roof plane, such as {@code planes.south}. */
  public static Subject plane(String name) {
    return Subject.of("planes." + name);
  }

  /** A roof covering, such as {@code panels.barn roof}. */
  public static Subject panel(String name) {
    return Subject.of("panels." + name);
  }

  /** A module, such as {@code fields.A / module R2C3}. */
  public static Subject module(PlacedModule module) {
    return field(module.field()).part("module " + place(module));
  }

  private static String place(PlacedModule module) {
    String before = module.field() + ".";
    return module.name().startsWith(before)
        ? module.name().substring(before.length())
        : module.name();
  }
}
