package clampwise.packaging;

import java.util.Map;

/** Defines the given classes itself and leaves all others to the application. */
final class BytesLoader extends ClassLoader {
  private final Map<String, byte[]> classes;

  /** Takes class files by internal name. */
  BytesLoader(Map<String, byte[]> classes) {
    super(BytesLoader.class.getClassLoader());
    this.classes = classes;
  }

  @Override
  protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
    byte[] bytes = classes.get(name.replace('.', '/'));
    if (bytes == null) {
      return super.loadClass(name, resolve);
    }
    Class<?> known = findLoadedClass(name);
    return known == null ? defineClass(name, bytes, 0, bytes.length) : known;
  }
}
