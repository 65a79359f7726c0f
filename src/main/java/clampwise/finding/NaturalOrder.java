package clampwise.finding;

/** The order in which people put names: {@code C2} before {@code C10}. */
public final class NaturalOrder {

  private NaturalOrder() {}

  /** Compares two names, runs of digits as numbers; equal only if the names are. */
  public static int compare(String one, String other) {
    int a = 0;
    int b = 0;
    while (a < one.length() && b < other.length()) {
      int endA = endOfDigits(one, a);
      int endB = endOfDigits(other, b);
      boolean numbers = endA > a && endB > b;
      int order =
          numbers
              ? compareDigits(one.substring(a, endA), other.substring(b, endB))
              : one.charAt(a) - other.charAt(b);
      if (order != 0) {
        return order;
      }
      a = numbers ? endA : a + 1;
      b = numbers ? endB : b + 1;
    }
    int rest = Integer.compare(one.length() - a, other.length() - b);
    return rest != 0 ? rest : one.compareTo(other);
  }

  private static int endOfDigits(String name, int from) {
    int end = from;
    while (end < name.length() && isDigit(name.charAt(end))) {
      end++;
    }
    return end;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static int compareDigits(String one, String other) {
    String a = withoutZeros(one);
    String b = withoutZeros(other);
    return a.length() == b.length() ? a.compareTo(b) : a.length() - b.length();
  }

  private static String withoutZeros(String digits) {
    int start = 0;
    while (start < digits.length() - 1 && digits.charAt(start) == '0') {
      start++;
    }
    return digits.substring(start);
  }
}
