package clampwise.facts.roof;

import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;

/** Names the things that roof facts are about. */
final class Subjects {

  private Subjects() {}

  static Subject plane(PlaneLayout plane) {
    return Subject.of("planes." + plane.name());
  }

  static Subject field(FieldLayout field) {
    return field(field.name());
  }

  static Subject field(String name) {
    return Subject.of("fields." + name);
  }

  static Subject module(PlacedModule module) {
    return field(module.field()).part("module " + within(module.field(), module.name()));
  }

  static Subject attachment(FieldLayout field, Attachment attachment) {
    return field(field).part("attachment " + within(field.name(), attachment.name()));
  }

  private static String within(String field, String name) {
    return name.startsWith(field + ".") ? name.substring(field.length() + 1) : name;
  }
}
