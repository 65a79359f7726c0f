package clampwise.calc.accuracy;

/** Which members of a sequence stand in order. */
public final class InOrder {

  private InOrder() {}

  /**
   * A longest part of a sequence that rises: what is left out is the least that has to be moved.
   *
   * @param places places in the right order, all different
   * @return for each member whether it belongs to that part
   */
  public static boolean[] rising(int[] places) {
    int[] length = new int[places.length];
    int[] before = new int[places.length];
    int last = -1;
    for (int i = 0; i < places.length; i++) {
      before[i] = -1;
      for (int j = 0; j < i; j++) {
        if (places[j] < places[i] && length[j] > length[i]) {
          length[i] = length[j];
          before[i] = j;
        }
      }
      length[i]++;
      last = last < 0 || length[i] > length[last] ? i : last;
    }
    return chain(before, last);
  }

  private static boolean[] chain(int[] before, int last) {
    boolean[] rising = new boolean[before.length];
    for (int i = last; i >= 0; i = before[i]) {
      rising[i] = true;
    }
    return rising;
  }
}
