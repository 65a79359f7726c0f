package clampwise.report;

import clampwise.MadeByBuild;
import clampwise.finding.Basis;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
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
    return new Citations(shipped());
  }

  @MadeByBuild
  private static Map<String, String> shipped() {
    try (InputStream in = Citations.class.getResourceAsStream(REFERENCES)) {
      return in == null ? Map.of() : read(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Map<String, String> read(InputStream in) throws IOException {
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
    return byKey;
  }

  private static String value(String field) {
    return field.substring(field.indexOf('{') + 1, field.lastIndexOf('}'));
  }

  /** The document that a key stands for; the key itself when it is not known. */
  String document(String key) {
    return byKey.getOrDefault(key, key);
  }

  /** The document with the editions that are meant, such as {@code ASCE/SEI 7-16 and 7-22}. */
  String document(Basis basis) {
    String document = document(basis.key());
    int last = document.lastIndexOf(' ') + 1;
    if (basis.edition().isEmpty()) {
      return document;
    }
    return basis.edition().startsWith(document.substring(last))
        ? document.substring(0, last) + basis.edition()
        : document + " " + basis.edition();
  }

  /** Clause, how the number was obtained, and where it holds. */
  String detail(Basis basis) {
    return joined("", basis);
  }

  /** A basis in a line, such as {@code ASCE/SEI 7-16, 29.4.4 (read); holds for modules}. */
  String text(Basis basis) {
    return joined(document(basis), basis);
  }

  private String joined(String document, Basis basis) {
    StringBuilder text = new StringBuilder(document);
    add(text, ", ", basis.clause());
    if (!basis.obtained().equalsIgnoreCase(document(basis))) {
      add(text, " ", basis.obtained().isEmpty() ? "" : "(" + basis.obtained() + ")");
    }
    add(text, "; ", basis.validity().isEmpty() ? "" : "holds for " + basis.validity());
    return text.toString();
  }

  private static void add(StringBuilder text, String before, String part) {
    if (!part.isEmpty()) {
      text.append(text.isEmpty() ? "" : before).append(part);
    }
  }
}
