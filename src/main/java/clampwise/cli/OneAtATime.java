package clampwise.cli;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Lets one process at a time read, change and write a file. What marks that lies among the
 * temporary files and is empty, so that nothing is left beside the file itself.
 */
final class OneAtATime {

  private OneAtATime() {}

  /** Does something with a file while no other process does. */
  static <T> T on(Path file, Supplier<T> work) {
    Optional<FileChannel> held = hold(file);
    try {
      return work.get();
    } finally {
      held.ifPresent(OneAtATime::release);
    }
  }

  /** Without a place for the mark the file is still written whole or not at all. */
  private static Optional<FileChannel> hold(Path file) {
    String path = file.toAbsolutePath().normalize().toString();
    String name = "clampwise-" + Integer.toHexString(path.hashCode()) + ".lock";
    Path mark = Path.of(System.getProperty("java.io.tmpdir", "."), name);
    try {
      FileChannel channel =
          FileChannel.open(mark, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      if (channel.lock().isValid()) {
        return Optional.of(channel);
      }
      channel.close();
    } catch (IOException e) {
      return Optional.empty();
    }
    return Optional.empty();
  }

  private static void release(FileChannel channel) {
    try {
      channel.close();
    } catch (IOException e) {
      // The end of the process releases it.
    }
  }
}
