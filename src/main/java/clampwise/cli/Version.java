package clampwise.cli;

/** Which clampwise this is. */
final class Version {

  private Version() {}

  /** The version in the manifest of the jar; a build from classes has none. */
  static String text() {
    String version = Version.class.getPackage().getImplementationVersion();
    return version == null ? "unpackaged" : version;
  }
}
