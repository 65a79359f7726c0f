package clampwise.batch;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How values of one type are written and read; what is read has to be written just so. */
interface Shape {

  void write(Object value, CodecOut out) throws IOException;

  Object read(CodecIn in) throws IOException;

  /** A text; one that was there before is written as its number. */
  record OfText() implements Shape {
    @Override
    public void write(Object value, CodecOut out) throws IOException {
      out.text((String) value);
    }

    @Override
    public Object read(CodecIn in) throws IOException {
      return in.text();
    }
  }

  /** A whole number. */
  record OfInt() implements Shape {
    @Override
    public void write(Object value, CodecOut out) throws IOException {
      out.row().writeNumber((Integer) value);
    }

    @Override
    public Object read(CodecIn in) throws IOException {
      return in.integer();
    }
  }

  /** A number, to the last bit. */
  record OfDouble() implements Shape {
    @Override
    public void write(Object value, CodecOut out) throws IOException {
      out.row().writeNumber((Double) value);
    }

    @Override
    public Object read(CodecIn in) throws IOException {
      return in.number();
    }
  }

  /** Yes or no. */
  record OfFlag() implements Shape {
    @Override
    public void write(Object value, CodecOut out) throws IOException {
      out.row().writeBoolean((Boolean) value);
    }

    @Override
    public Object read(CodecIn in) throws IOException {
      return in.flag();
    }
  }

  /** A word of an enum, by its name. */
  record OfWord(Class<?> type) implements Shape {
    @Override
    public void write(Object value, CodecOut out) throws IOException {
      out.text(((Enum<?>) value).name());
    }

    @Override
    public Object read(CodecIn in) throws IOException {
      String name = in.text();
      for (Object word : type.getEnumConstants()) {
        if (((Enum<?>) word).name().equals(name)) {
          return word;
        }
      }
      throw new IOException("no such word: " + name);
    }
  }

  /** How many there are, then the values in their order. */
  record OfList(Shape each, int most) implements Shape {
    @Override
    public void write(Object value, CodecOut out) throws IOException {
      List<?> list = (List<?>) value;
      out.row().writeNumber(list.size());
      for (Object one : list) {
        each.write(one, out);
      }
    }

    @Override
    public Object read(CodecIn in) throws IOException {
      int count = in.count(most);
      List<Object> list = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        list.add(each.read(in));
      }
      return List.copyOf(list);
    }
  }

  /** A value or none. */
  record OfOptional(OfList list) implements Shape {
    @Override
    public void write(Object value, CodecOut out) throws IOException {
      list.write(((Optional<?>) value).stream().toList(), out);
    }

    @Override
    public Object read(CodecIn in) throws IOException {
      return ((List<?>) list.read(in)).stream().findFirst();
    }
  }
}
