package clampwise.report;

import clampwise.finding.Basis;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** How documents are cited: by their number where they have one, else by their title. */
final class Citations {

  private static final String REFERENCES = "/clampwise/shared/references.bib";

  private final Map<String, String> byKey;

  private Citations(Map<String, String> byKey) {
    this.byKey = byKey;
  }

  /** The references that ship with the program. */
  static Citations packed() {
    try (InputStream in = Citations.class.getResourceAsStream(REFERENCES)) {
      return in == null ? new Citations(Map.of()) : read(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Citations read(InputStream in) throws IOException {
    Map<String, String> byKey = new HashMap<>();
    BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
    String key = "";
    for (String line = lines.readLine(); line != null; line = lines.readLine()) {
      String text = line.strip();
      if (text.startsWith("@")) {
        key = text.substring(text.indexOf('{') + 1).replace(",", "").strip();
      } else if (text.startsWith("number")) {
        byKey.put(key, value(text));
      } else if (text.startsWith("title")) {
        byKey.putIfAbsent(key, value(text));
      }
    }
    return new Citations(byKey);
  }

  private static String value(String field) {
    return field.substring(field.indexOf('{') + 1, field.lastIndexOf('}'));
  }

  /** The document that a key stands for; the key itself when it is not known. */
  String document(String key) {
    return byKey.getOrDefault(key, key);
  }

  /** The document and what of it holds, without saying the same twice. */
  String text(Basis basis) {
    String document = document(basis.key());
    if (basis.detail().isEmpty()) {
      return document;
    }
    boolean repeats =
        basis.detail().toLowerCase(Locale.ROOT).contains(document.toLowerCase(Locale.ROOT));
    return repeats ? basis.detail() : document + ": " + basis.detail();
  }
}
