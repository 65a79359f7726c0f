package clampwise.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CrewTest {

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 7})
  void resultsComeInTheirOrderWhicheverIsDoneFirst(int cores) {
    List<Integer> seen = new ArrayList<>();
    new Crew(cores).run(300, CrewTest::slowIfEven, seen::add);
    assertThat(seen).isEqualTo(IntStream.range(0, 300).boxed().toList());
  }

  private static int slowIfEven(int number) {
    if (number % 2 == 0) {
      Thread.yield();
    }
    return number;
  }

  @Test
  void noMoreWorksThanCoresRunAtOnce() {
    AtomicInteger running = new AtomicInteger();
    List<Integer> most = new ArrayList<>();
    new Crew(3).run(200, number -> atOnce(running), most::add);
    assertThat(most).allMatch(count -> count <= 3);
  }

  private static int atOnce(AtomicInteger running) {
    int now = running.incrementAndGet();
    Thread.yield();
    running.decrementAndGet();
    return now;
  }

  @Test
  void worksDoRunAtOnce() {
    CountDownLatch both = new CountDownLatch(2);
    List<Boolean> met = new ArrayList<>();
    new Crew(2).run(2, number -> meet(both), met::add);
    assertThat(met).containsExactly(true, true);
  }

  private static boolean meet(CountDownLatch both) {
    both.countDown();
    try {
      return both.await(1, TimeUnit.MINUTES);
    } catch (InterruptedException e) {
      return false;
    }
  }

  @Test
  void onlySoManyResultsWait() {
    AtomicInteger begun = new AtomicInteger();
    List<Integer> waiting = new ArrayList<>();
    new Crew(2)
        .run(
            1000,
            number -> begun.incrementAndGet(),
            done -> waiting.add(begun.get() - waiting.size()));
    assertThat(waiting).hasSize(1000).allMatch(count -> count <= 64);
  }

  @Test
  void aFaultInAWorkIsTheFaultOfTheRun() {
    Crew crew = new Crew(2);
    assertThatThrownBy(() -> crew.run(5, number -> 1 / (number - 2), result -> {}))
        .isInstanceOf(ArithmeticException.class);
  }

  @Test
  void nothingToDoIsDone() {
    new Crew(2).run(0, number -> number, result -> assertThat(result).isNull());
    assertThat(Crew.ofAllCores().cores()).isPositive();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          0 | 10 | 5 | 0 of 10 jobs
          1 | 10 | 0.5 | 1 of 10 jobs
          1 | 10 | 1 | 1 of 10 jobs, about 9 s left
          10 | 20 | 21 | 10 of 20 jobs, about 25 s left
          1 | 601 | 1 | 1 of 601 jobs, about 10 min left
          10 | 10 | 9 | 10 of 10 jobs, about 0 s left
          """)
  void progressSaysWhatIsLeft(int done, int total, double seconds, String text) {
    assertThat(new Progress(done, total, seconds).text()).isEqualTo(text);
  }
}
