package clampwise.repository;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChangesTest {

  @TempDir private Path folder;
  private Scratch scratch;
  private String first = "";

  @BeforeEach
  void aRepositoryWithOneCommit() {
    scratch = new Scratch(folder).init().file(".gitignore", "*.tmp\n");
    first = scratch.file("a/x", "one\ntwo\n").files("a/y", "b/z").commit();
  }

  private List<String> touched(String... names) throws Exception {
    try (Changes changes = Changes.since(first, folder)) {
      ArrayList<String> touched = new ArrayList<>();
      for (String name : names) {
        if (changes.touches(folder.resolve(name))) {
          touched.add(name);
        }
      }
      return touched;
    }
  }

  @Test
  void whatIsAsItWasIsNotTouched() throws Exception {
    assertThat(touched("a/x", "a/y", "b/z", "never/was", "a/never")).isEmpty();
  }

  @Test
  void changesCountWhetherTheyAreCommittedStagedOrNeither() throws Exception {
    scratch.file("a/x", "three\n").commit();
    scratch.file("a/y", "changed").file("new", "new").file("b/ignored.tmp", "new");
    Files.delete(folder.resolve("b/z"));
    Files.delete(folder.resolve("b/ignored.tmp"));
    Files.delete(folder.resolve("b"));
    assertThat(touched("a/x", "a/y", "b/z", "new", "b/ignored.tmp"))
        .containsExactly("a/x", "a/y", "b/z", "new");
  }

  @Test
  void aFileThatGitIgnoresWasNotThereAsFarAsAnyoneKnows() throws Exception {
    scratch.file("loads.tmp", "x");
    assertThat(touched("loads.tmp")).containsExactly("loads.tmp");
  }

  @Test
  void howLinesEndIsNoChange() throws Exception {
    scratch.file("a/x", "one\r\ntwo\r\n");
    assertThat(touched("a/x")).isEmpty();
    scratch.file("a/x", "one\r\ntwo \r\n");
    assertThat(touched("a/x")).containsExactly("a/x");
  }

  @Test
  void aChangeThatWasTakenBackIsNone() throws Exception {
    scratch.file("a/y", "other").commit();
    scratch.file("a/y", "a/y");
    assertThat(touched("a/y")).isEmpty();
  }

  @Test
  void aLinkIsTouchedWithWhatItLeadsTo() throws Exception {
    try {
      Files.createSymbolicLink(folder.resolve("link"), Path.of("a/y"));
    } catch (IOException | UnsupportedOperationException e) {
      assumeTrue(false, "no links here");
    }
    assertThat(touched("link")).containsExactly("link");
    first = scratch.commit();
    assertThat(touched("link")).isEmpty();
    scratch.file("a/y", "changed");
    assertThat(touched("link")).containsExactly("link");
  }

  @Test
  void anUnknownRevisionOrNoRepositoryIsSaid(@TempDir Path plain) {
    assertThatThrownBy(() -> Changes.since("nowhere", folder))
        .isInstanceOf(RevisionException.class)
        .hasMessageStartingWith("there is no revision nowhere in the git repository");
    assertThatThrownBy(() -> Changes.since("a b..c^{{", folder))
        .hasMessageContaining("no revision a b..c^{{");
    assertThatThrownBy(() -> Changes.since("HEAD", plain))
        .isInstanceOf(RevisionException.class)
        .hasMessageEndingWith("lies in no git repository");
  }
}
