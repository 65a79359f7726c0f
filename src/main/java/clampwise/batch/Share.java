package clampwise.batch;

/**
 * Which jobs of a list fall to one of several machines: of three, the first gets the first, fourth,
 * seventh and so on, since neighbours take alike long.
 *
 * @param part which machine [1..parts]
 * @param parts how many there are
 */
public record Share(int part, int parts) {

  /** The whole list. */
  public static final Share ALL = new Share(1, 1);

  /** How many of some jobs fall to it. */
  public int of(int jobs) {
    return (jobs - part + parts) / parts;
  }

  /** The place in the whole list of one of its jobs, both counted from 0. */
  public int place(int own) {
    return own * parts + part - 1;
  }
}
