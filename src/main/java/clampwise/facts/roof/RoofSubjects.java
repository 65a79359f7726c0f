package clampwise.facts.roof;

import clampwise.facts.Subjects;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;

/** Names the things that roof facts are about. */
final class RoofSubjects {

  private RoofSubjects() {}

  static Subject plane(PlaneLayout plane) {
    return Subject.of("planes." + plane.name());
  }

  static Subject field(FieldLayout field) {
    return Subjects.field(field.name());
  }

  static Subject module(PlacedModule module) {
    return Subjects.module(module);
  }

  static Subject attachment(FieldLayout field, Attachment attachment) {
    String before = field.name() + ".";
    String name = attachment.name();
    String place = name.startsWith(before) ? name.substring(before.length()) : name;
    return field(field).part("attachment " + place);
  }
}
