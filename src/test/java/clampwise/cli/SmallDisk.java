package clampwise.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A small file system in memory, mounted for a test; only root on Linux can do that. */
final class SmallDisk implements AutoCloseable {

  private final Path folder;

  private SmallDisk(Path folder) {
    this.folder = folder;
  }

  /** Mounts one. Without the right to do so, as in many containers, the test is skipped. */
  static SmallDisk mount(Path folder, int kilobytes) throws IOException {
    Files.createDirectories(folder);
    boolean mounted =
        does("mount", "-t", "tmpfs", "-o", "size=" + kilobytes + "k", "tmpfs", folder.toString());
    assumeTrue(mounted, "no file system can be mounted here");
    return new SmallDisk(folder);
  }

  /** Nothing can be written to it any more, not even by root. */
  void makeReadOnly() {
    assertThat(does("mount", "-o", "remount,ro", folder.toString())).isTrue();
  }

  @Override
  public void close() {
    assertThat(does("umount", folder.toString())).isTrue();
  }

  private static boolean does(String... command) {
    try {
      Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
      process.getInputStream().readAllBytes();
      return process.waitFor() == 0;
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }
}
