package clampwise.cli;

import clampwise.report.Paint;
import clampwise.report.Role;
import org.fusesource.jansi.Ansi;

/** Colours of a terminal for the roles of a report. */
final class Colours implements Paint {

  @Override
  public String paint(Role role, String text) {
    return role == Role.PLAIN ? text : pen(role).a(text).reset().toString();
  }

  private static Ansi pen(Role role) {
    Ansi pen = Ansi.ansi();
    return switch (role) {
      case ERROR -> pen.bold().fgRed();
      case WARNING -> pen.bold().fgYellow();
      case NOTE -> pen.bold().fgCyan();
      case HEADING -> pen.bold();
      case PLACE -> pen.fgCyan();
      case FAINT -> pen.a(Ansi.Attribute.INTENSITY_FAINT);
      case PLAIN -> pen;
    };
  }
}
