package clampwise.job;

import clampwise.source.Node;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.deser.BeanDeserializerFactory;
import com.fasterxml.jackson.databind.deser.DefaultDeserializationContext;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;

/**
 * Binds nodes to the records of the job with Jackson's deserializers. They are called without an
 * object mapper, which would look into every record and set up the date formats of all locales: a
 * third of the time in which the program starts.
 */
final class Binding {

  /** The deserializers of the job file need nothing of it; what they share is the reading. */
  private static final DeserializationContext CONTEXT =
      new DefaultDeserializationContext.Impl(BeanDeserializerFactory.instance);

  private Binding() {}

  /** Gets everything ready that the first binding needs, so that it can be done ahead of it. */
  static void prepare() {
    Deserializing.prepare(Job.class);
  }

  /** The record of a node; empty, after a problem, if the node cannot be read as one. */
  static <T> Optional<T> bind(Node node, Class<T> type, Reading reading) {
    NodeParser parser = new NodeParser(node, reading);
    parser.nextToken();
    try {
      return Optional.ofNullable(type.cast(Deserializing.of(type).deserialize(parser, CONTEXT)));
    } catch (IOException e) {
      throw new UncheckedIOException("binding reads no files", e);
    }
  }
}
