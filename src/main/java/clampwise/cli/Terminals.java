package clampwise.cli;

import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.fusesource.jansi.AnsiConsole;
import org.fusesource.jansi.AnsiPrintStream;
import org.fusesource.jansi.AnsiType;

/** Finds out what the process is connected to. */
final class Terminals {

  /** Set by the POSIX launcher, which knows: columns of the terminal, 0 when there is none. */
  private static final String COLUMNS = "clampwise.columns";

  /** Set by the POSIX launcher while standard error is a terminal that can clear a line. */
  private static final String PROGRESS = "clampwise.progress";

  private Terminals() {}

  /** The console of this process. */
  static Console console() {
    String columns = System.getProperty(COLUMNS, "");
    return columns.isEmpty() ? asked() : told(number(columns));
  }

  private static Console told(int columns) {
    OutputStream out = new FileOutputStream(FileDescriptor.out);
    return console(out, new Screen(columns > 0, columns, Boolean.getBoolean(PROGRESS)));
  }

  /**
   * Without the launcher, or on Windows, Jansi asks the system and makes colours work. Its stream
   * keeps quiet about a full disk, so files and pipes get the plain one.
   */
  private static Console asked() {
    if (!unpackInto(cacheFolder(System.getenv()))) {
      return console(new FileOutputStream(FileDescriptor.out), Screen.NONE);
    }
    AnsiPrintStream out = AnsiConsole.out();
    boolean terminal =
        out.getType() != AnsiType.Redirected && out.getType() != AnsiType.Unsupported;
    return terminal
        ? console(out, new Screen(true, out.getTerminalWidth()))
        : console(new FileOutputStream(FileDescriptor.out), Screen.NONE);
  }

  /** Jansi unpacks a library before it can ask; it goes into the user's cache folder. */
  private static boolean unpackInto(Path folder) {
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      return false;
    }
    System.setProperty("jansi.tmpdir", folder.toString());
    return Files.isWritable(folder);
  }

  private static Console console(OutputStream out, Screen screen) {
    return new Console(
        new FileInputStream(FileDescriptor.in),
        out,
        new FileOutputStream(FileDescriptor.err),
        System.getenv(),
        screen);
  }

  /** The user's cache folder for this program (XDG base directories; local data on Windows). */
  static Path cacheFolder(Map<String, String> environment) {
    String home = System.getProperty("user.home", ".");
    String windows = environment.getOrDefault("LOCALAPPDATA", "");
    String xdg = environment.getOrDefault("XDG_CACHE_HOME", "");
    String base = !xdg.isEmpty() ? xdg : !windows.isEmpty() ? windows : home + "/.cache";
    return Path.of(base, CommandTree.PROGRAM);
  }

  private static int number(String digits) {
    try {
      return Integer.parseInt(digits);
    } catch (NumberFormatException e) {
      return 0;
    }
  }
}
