package clampwise.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ScreenTest {

  private static final Screen TERMINAL = new Screen(true, 80);

  @Test
  void aTerminalIsColouredUnlessItsUserObjects() {
    assertThat(TERMINAL.coloursByItself(Map.of("TERM", "xterm"))).isTrue();
    assertThat(TERMINAL.coloursByItself(Map.of("NO_COLOR", ""))).isTrue();
    assertThat(TERMINAL.coloursByItself(Map.of("NO_COLOR", "1"))).isFalse();
    assertThat(TERMINAL.coloursByItself(Map.of("TERM", "dumb"))).isFalse();
    assertThat(Screen.NONE.coloursByItself(Map.of("TERM", "xterm"))).isFalse();
  }

  @Test
  void textIsNeitherWiderThanEyesLikeNorNarrowerThanItCanBe() {
    assertThat(Screen.NONE.textWidth()).isEqualTo(80);
    assertThat(new Screen(true, 72).textWidth()).isEqualTo(72);
    assertThat(new Screen(true, 240).textWidth()).isEqualTo(100);
    assertThat(new Screen(true, 10).textWidth()).isEqualTo(40);
  }

  @Test
  void theCacheFolderFollowsTheBaseDirectories() {
    assertThat(Terminals.cacheFolder(Map.of("XDG_CACHE_HOME", "/c")))
        .isEqualTo(Path.of("/c", "clampwise"));
    assertThat(Terminals.cacheFolder(Map.of()).toString()).endsWith("clampwise");
  }
}
