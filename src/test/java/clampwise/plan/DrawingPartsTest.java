package clampwise.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

class DrawingPartsTest {

  /** ISO 5455, from memory: 1:50, 1:100; 1:75 and inches to a foot: common practice, no source. */
  @ParameterizedTest
  @CsvSource({
    "13.6, 5, false, 1:50",
    "13.7, 5, false, 1:75",
    "27, 10, false, 1:100",
    "1, 23, false, 1:100",
    "30.48, 9.6, true, 3/32 in = 1 ft (1:128)",
    "3000, 100, false, 1:12000"
  })
  void theLargestUsualScaleThatFits(double wideM, double highM, boolean imperial, String words) {
    Point room = new Point(272, 238);
    DrawingScale scale = DrawingScale.fitting(wideM, highM, room, imperial);
    assertThat(scale.words()).isEqualTo(words);
    assertThat(wideM * scale.mmPerM()).isLessThanOrEqualTo(272);
    assertThat(highM * scale.mmPerM()).isLessThanOrEqualTo(238);
  }

  /** Lines at 45 degrees, d apart, across an area A have a length of A / d in all. */
  @ParameterizedTest
  @CsvSource({"true", "false"})
  void hatchingIsAsDenseAsAskedFor(boolean rising) {
    Geometry area = Spots.SHAPES.toGeometry(new Envelope(3, 13, 2, 6));
    Geometry lines = Hatching.of(area, 0.1, rising);
    assertThat(lines.getLength()).isCloseTo(40 / 0.1, within(4.0));
    assertThat(area.buffer(1e-9).covers(lines)).isTrue();
  }

  @Test
  void anEmptyAreaHasNoHatching() {
    assertThat(Hatching.of(Spots.SHAPES.createPolygon(), 0.1, true).isEmpty()).isTrue();
  }

  @Test
  void aFrameHasTheEaveBelowAndTheLeftEndLeft() {
    Frame frame =
        new Frame(
            new Envelope(0, 10, 0, 5),
            new Point(30, 24),
            DrawingScale.fitting(10, 5, new Point(100, 100), false));
    assertThat(frame.at(0, 5)).isEqualTo(new Point(30, 24));
    assertThat(frame.at(10, 0)).isEqualTo(new Point(130, 74));
    assertThat(frame.metres(frame.mm(3))).isCloseTo(3, within(1e-12));
  }

  @Test
  void wordsWithoutRoomAreCutOffVisibly() {
    String cut = Letters.fitted("a name that is far too long", Style.TEXT, 20);
    assertThat(cut).endsWith("…").hasSizeLessThan(20);
    assertThat(Letters.widthMm(cut, Style.TEXT)).isLessThanOrEqualTo(20);
    assertThat(Letters.fitted("short", Style.TEXT, 20)).isEqualTo("short");
  }
}
