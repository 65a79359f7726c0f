package clampwise.batch;

import clampwise.calc.trail.Chain;
import clampwise.calc.trail.Section;
import clampwise.facts.Facts;
import clampwise.source.SourceText;
import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The shapes of types, worked out from the types themselves: texts, numbers, words, lists, what may
 * be missing, and records of these. Nothing that is written names a class.
 */
final class Shapes {

  private static final int MOST = Integer.MAX_VALUE;

  private final Map<Type, Shape> known = new HashMap<>();

  /** The shape of a type; a type that has none is a mistake of the program. */
  Shape of(Type type) {
    Shape shape = known.get(type);
    if (shape == null) {
      shape = make(type);
      known.put(type, shape);
    }
    return shape;
  }

  private Shape make(Type type) {
    if (type instanceof ParameterizedType generic) {
      return make(generic.getRawType(), generic.getActualTypeArguments()[0]);
    }
    if (type == String.class) {
      return new Shape.OfText();
    }
    if (type == int.class || type == Integer.class) {
      return new Shape.OfInt();
    }
    if (type == double.class || type == Double.class) {
      return new Shape.OfDouble();
    }
    return type == boolean.class ? new Shape.OfFlag() : make((Class<?>) type);
  }

  private Shape make(Type raw, Type of) {
    if (raw == List.class) {
      return new Shape.OfList(this.of(of), MOST);
    }
    if (raw != Optional.class) {
      throw new IllegalStateException("no shape for " + raw);
    }
    return of == Facts.class
        ? new LeftOut()
        : new Shape.OfOptional(new Shape.OfList(this.of(of), 1));
  }

  private Shape make(Class<?> type) {
    if (type.isEnum()) {
      return new Shape.OfWord(type);
    }
    if (type == Chain.class) {
      return new OfChain(new Shape.OfList(of(Section.class), MOST));
    }
    if (type == SourceText.class) {
      return new OfSource();
    }
    if (!type.isRecord()) {
      throw new IllegalStateException("no shape for " + type);
    }
    return new RecordShape(type, this);
  }

  /** Facts, of which only their absence is written. */
  private record LeftOut() implements Shape {
    @Override
    public void write(Object value, CodecOut out) {}

    @Override
    public Object read(CodecIn in) {
      return Optional.empty();
    }
  }

  /** A calculation, worked out. */
  private record OfChain(Shape sections) implements Shape {
    @Override
    public void write(Object value, CodecOut out) throws IOException {
      sections.write(((Chain) value).sections(), out);
    }

    @Override
    @SuppressWarnings("unchecked") // the shape of a list of sections reads nothing else
    public Object read(CodecIn in) throws IOException {
      List<Section> read = (List<Section>) sections.read(in);
      return (Chain) () -> read;
    }
  }

  /** A file that was read: its name and the digest of its bytes. */
  private record OfSource() implements Shape {
    @Override
    public void write(Object value, CodecOut out) throws IOException {
      out.text(((SourceText) value).file());
      out.text(((SourceText) value).sha256());
    }

    @Override
    public Object read(CodecIn in) throws IOException {
      return SourceText.ofDigest(in.text(), in.text());
    }
  }
}
