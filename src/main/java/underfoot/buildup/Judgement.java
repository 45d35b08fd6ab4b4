package underfoot.buildup;

import java.util.Locale;

/** How a part of a proposal compares with what is asked, the worst first. */
public enum Judgement {
  /** It does harm. */
  MUST_NOT,
  /** What is asked is not there. */
  MISSING,
  /** It is there, and too little, too thin or too weak. */
  SHORT_OF,
  /** It is there, and in the wrong place or at the wrong time. */
  WRONG_ORDER,
  /** It keeps to what holds here, and to no limit that was borrowed from elsewhere; no fault. */
  ADVISED,
  /** The proposal does not say; no fault. */
  NOT_SAID,
  /** It is what is asked. */
  AGREES,
  /** It does no harm, and nothing asks for it; no fault. */
  MORE_THAN_NEEDED;

  /** The word used in reports and JSON. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** The judgement of a word. */
  public static Judgement of(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT).replace(' ', '_'));
  }

  /** Whether it has to be put right before anybody builds so. */
  public boolean isFault() {
    return compareTo(ADVISED) < 0;
  }
}
