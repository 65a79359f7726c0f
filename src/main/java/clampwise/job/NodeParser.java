package clampwise.job;

import clampwise.source.Node;
import com.fasterxml.jackson.core.Base64Variant;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.ObjectCodec;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.Version;
import com.fasterxml.jackson.core.base.ParserMinimalBase;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Gives Jackson the tokens of a node tree and deserializers the node they stand on. */
final class NodeParser extends ParserMinimalBase {

  private final Deque<NodeCursor> open = new ArrayDeque<>();
  private final Node root;
  private final Reading reading;
  private Node node;
  private @Nullable ObjectCodec codec;
  private boolean closed;

  NodeParser(Node root, Reading reading) {
    super(StreamReadConstraints.defaults());
    this.root = root;
    this.reading = reading;
    this.node = root;
  }

  /** What the deserializers of this run share. */
  Reading reading() {
    return reading;
  }

  /** The value the current token begins or ends. */
  Node node() {
    return node;
  }

  /** The key nearest above the current value, empty at the root. */
  String key() {
    for (NodeCursor cursor : open) {
      if (!cursor.key().isEmpty()) {
        return cursor.key();
      }
    }
    return "";
  }

  @Override
  public @Nullable JsonToken nextToken() {
    NodeCursor top = open.peek();
    if (top == null) {
      _currToken = _currToken == null ? enter(root) : null;
    } else if (top.isAtKey()) {
      _currToken = enter(top.value());
    } else if (top.advance()) {
      _currToken = top.isAtKey() ? JsonToken.FIELD_NAME : enter(top.value());
    } else {
      node = open.pop().node();
      _currToken = node instanceof Node.Mapping ? JsonToken.END_OBJECT : JsonToken.END_ARRAY;
    }
    return _currToken;
  }

  private JsonToken enter(Node value) {
    node = value;
    if (value instanceof Node.Mapping mapping) {
      open.push(NodeCursor.over(mapping));
      return JsonToken.START_OBJECT;
    }
    if (value instanceof Node.Sequence sequence) {
      open.push(NodeCursor.over(sequence));
      return JsonToken.START_ARRAY;
    }
    return value.isEmpty() ? JsonToken.VALUE_NULL : JsonToken.VALUE_STRING;
  }

  /** The key node the parser stands on. */
  Node.Scalar keyNode() {
    return Objects.requireNonNull(open.peek()).keyNode();
  }

  @Override
  public @Nullable String currentName() {
    NodeCursor top = open.peek();
    return top == null ? null : top.key();
  }

  @Deprecated
  @Override
  public @Nullable String getCurrentName() {
    return currentName();
  }

  @Override
  public String getText() {
    if (_currToken == JsonToken.FIELD_NAME) {
      return String.valueOf(currentName());
    }
    return node instanceof Node.Scalar scalar ? scalar.text() : "";
  }

  @Override
  public char[] getTextCharacters() {
    return getText().toCharArray();
  }

  @Override
  public int getTextLength() {
    return getText().length();
  }

  @Override
  public int getTextOffset() {
    return 0;
  }

  @Override
  public boolean hasTextCharacters() {
    return false;
  }

  @Override
  public JsonLocation currentLocation() {
    return currentTokenLocation();
  }

  @Override
  public JsonLocation currentTokenLocation() {
    var start = node.at().start();
    return new JsonLocation(null, -1, start.line(), start.column());
  }

  @Deprecated
  @Override
  public JsonLocation getCurrentLocation() {
    return currentLocation();
  }

  @Deprecated
  @Override
  public JsonLocation getTokenLocation() {
    return currentTokenLocation();
  }

  @Override
  public @Nullable JsonStreamContext getParsingContext() {
    return null;
  }

  @Override
  public @Nullable ObjectCodec getCodec() {
    return codec;
  }

  @Override
  public void setCodec(ObjectCodec newCodec) {
    codec = newCodec;
  }

  @Override
  public Version version() {
    return Version.unknownVersion();
  }

  @Override
  public boolean isClosed() {
    return closed;
  }

  @Override
  public void close() {
    closed = true;
  }

  @Override
  public void overrideCurrentName(String name) {
    throw noNumbers();
  }

  @Override
  protected void _handleEOF() {}

  // All scalars are text here; the deserializers of the job file decide what they mean.

  @Override
  public byte[] getBinaryValue(Base64Variant variant) {
    throw noNumbers();
  }

  @Override
  public Number getNumberValue() {
    throw noNumbers();
  }

  @Override
  public NumberType getNumberType() {
    throw noNumbers();
  }

  @Override
  public int getIntValue() {
    throw noNumbers();
  }

  @Override
  public long getLongValue() {
    throw noNumbers();
  }

  @Override
  public BigInteger getBigIntegerValue() {
    throw noNumbers();
  }

  @Override
  public float getFloatValue() {
    throw noNumbers();
  }

  @Override
  public double getDoubleValue() {
    throw noNumbers();
  }

  @Override
  public BigDecimal getDecimalValue() {
    throw noNumbers();
  }

  private static UnsupportedOperationException noNumbers() {
    return new UnsupportedOperationException("a node tree holds text only");
  }
}
