package clampwise.repository;

import java.io.File;
import java.util.concurrent.TimeUnit;
import org.eclipse.jgit.lib.Config;
import org.eclipse.jgit.storage.file.FileBasedConfig;
import org.eclipse.jgit.util.FS;
import org.eclipse.jgit.util.SystemReader;

/**
 * The system as JGit sees it here: it may read the user's settings and nothing else. Left alone,
 * JGit starts the git program to find the settings of the machine, writes files into folders to
 * measure how fine their times are, and keeps what it measured.
 */
final class QuietSystem extends SystemReader.Delegate {

  private QuietSystem(SystemReader system) {
    super(system);
  }

  /** From now on JGit only reads. */
  static void use() {
    synchronized (QuietSystem.class) {
      if (!(SystemReader.getInstance() instanceof QuietSystem)) {
        SystemReader.setInstance(new QuietSystem(SystemReader.getInstance()));
      }
    }
  }

  @Override
  public FileBasedConfig openUserConfig(Config parent, FS fs) {
    return new Settings(super.openUserConfig(parent, fs), parent, fs);
  }

  @Override
  public FileBasedConfig openSystemConfig(Config parent, FS fs) {
    return new Nothing(parent, fs);
  }

  @Override
  public FileBasedConfig openJGitConfig(Config parent, FS fs) {
    return new Nothing(parent, fs);
  }

  /** Settings in which the times of every file system are two seconds coarse. */
  private static final class Settings extends FileBasedConfig {

    private static final long COARSE_S = 2;

    Settings(FileBasedConfig user, Config parent, FS fs) {
      super(parent, user.getFile(), fs);
    }

    @Override
    public long getTimeUnit(
        String section, String subsection, String name, long unless, TimeUnit unit) {
      return section.equals("filesystem")
          ? unit.convert(COARSE_S, TimeUnit.SECONDS)
          : super.getTimeUnit(section, subsection, name, unless, unit);
    }

    @Override
    public void save() {}
  }

  /** Settings without a file. */
  private static final class Nothing extends FileBasedConfig {

    Nothing(Config parent, FS fs) {
      super(parent, new File(""), fs);
    }

    @Override
    public void load() {}

    @Override
    public void save() {}

    @Override
    public boolean isOutdated() {
      return false;
    }
  }
}
