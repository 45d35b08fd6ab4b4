package underfoot.scenario;

/** A text that is no value of the fact it was written for. */
final class BadValue extends Exception {
  private final String how;

  BadValue(String what, String how) {
    super(what, null, false, false);
    this.how = how;
  }

  String how() {
    return how;
  }
}
