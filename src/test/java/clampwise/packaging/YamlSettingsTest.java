package clampwise.packaging;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import clampwise.source.PlainSchema;
import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.snakeyaml.engine.v2.api.LoadSettingsBuilder;
import org.snakeyaml.engine.v2.nodes.Tag;

class YamlSettingsTest {

  @Test
  void theParserBeginsWithTheSchemaThatResolvesNothing() throws IOException {
    byte[] builder = bytes(LoadSettingsBuilder.class);
    assertThat(new String(builder, ISO_8859_1)).contains(YamlSettings.USUAL);

    byte[] changed =
        Objects.requireNonNull(
            YamlSettings.of(
                    Map.of(
                        YamlSettings.BUILDER,
                        builder,
                        YamlSettings.PLAIN,
                        bytes(PlainSchema.class)))
                .get(YamlSettings.BUILDER));

    assertThat(new String(changed, ISO_8859_1))
        .contains(YamlSettings.PLAIN)
        .doesNotContain(YamlSettings.USUAL);
  }

  @Test
  void withoutThatSchemaNothingChanges() throws IOException {
    assertThat(YamlSettings.of(Map.of(YamlSettings.BUILDER, bytes(LoadSettingsBuilder.class))))
        .isEmpty();
  }

  @Test
  void everyValueStaysText() {
    PlainSchema schema = new PlainSchema();
    assertThat(schema.getScalarResolver().resolve("1.5", true)).isEqualTo(Tag.STR);
    assertThat(schema.getSchemaTagConstructors()).isEmpty();
  }

  private static byte[] bytes(Class<?> type) throws IOException {
    try (InputStream in = type.getResourceAsStream(type.getSimpleName() + ".class")) {
      return Objects.requireNonNull(in).readAllBytes();
    }
  }
}
