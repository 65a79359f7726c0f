package clampwise.report;

/** The room that a text may take, and the sections that share it. */
final class MarkdownRoom {

  /** What a section may say of what it leaves out; to be taken before it is made. */
  static final int NOTE = 200;

  private int left;

  MarkdownRoom(int most) {
    this.left = most;
  }

  /** Takes so much room, if there is; once there is not, nothing that weighs less gets any. */
  boolean take(int size) {
    boolean fits = size <= left;
    left = fits ? left - size : 0;
    return fits;
  }

  /** A section without items yet. */
  Section section(String opening, String closing) {
    return new Section(opening, closing);
  }

  /** Items in order; from the first on that does not fit all are left out. */
  final class Section {

    private final String opening;
    private final String closing;
    private final StringBuilder items = new StringBuilder();
    private int cut;

    private Section(String opening, String closing) {
      this.opening = opening;
      this.closing = closing;
    }

    /** Takes an item in, or counts it among those left out. */
    boolean add(String item) {
      int frame = items.length() == 0 ? opening.length() + closing.length() : 0;
      if (cut > 0 || !take(frame + item.length())) {
        cut++;
        return false;
      }
      items.append(item);
      return true;
    }

    /** The section with what it says of those left out; nothing where there were no items. */
    String text(String leftOut) {
      String note =
          cut == 0
              ? ""
              : "*"
                  + leftOut
                  + " left out for room; the printed review and other reports have all.*\n\n";
      return items.length() == 0 ? note : opening + items + closing + note;
    }

    int cut() {
      return cut;
    }
  }
}
