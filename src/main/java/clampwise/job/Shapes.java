package clampwise.job;

import clampwise.MadeByBuild;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.LinkedHashMap;
import java.util.Map;

/** The keys of all records of the job file and of the catalogue. */
final class Shapes {

  /** Shapes by record; those of other records are read when they are asked for. */
  static final Map<Class<?>, Shape> KNOWN = all();

  private Shapes() {}

  @MadeByBuild
  private static Map<Class<?>, Shape> all() {
    Map<Class<?>, Shape> shapes = new LinkedHashMap<>();
    addBelow(Job.class, shapes);
    addBelow(Shelf.class, shapes);
    return shapes;
  }

  private static void addBelow(Type type, Map<Class<?>, Shape> shapes) {
    if (type instanceof ParameterizedType generic) {
      addBelow(generic.getActualTypeArguments()[0], shapes);
    } else if (type instanceof Class<?> plain && isOfKeys(plain) && !shapes.containsKey(plain)) {
      Shape shape = Shape.read(plain);
      shapes.put(plain, shape);
      shape.slots().forEach(slot -> addBelow(slot.value(), shapes));
    }
  }

  private static boolean isOfKeys(Class<?> type) {
    return type.isRecord() && !Written.class.isAssignableFrom(type);
  }
}
