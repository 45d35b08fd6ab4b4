package underfoot.cli;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;

/** Damages a text as people, editors and ill will do. The same seed does the same damage. */
final class Mutilated {
  private static final String[] WORDS = {
    "unknown",
    "yes",
    "-1 mm",
    "1e999 m",
    "0 m",
    "NaN",
    "null",
    "~",
    "{",
    "}",
    "[",
    "]",
    "[[[[",
    ": ",
    "- ",
    "\t",
    "\"",
    "'",
    "&a",
    "*a",
    "!!java.net.URL",
    "<<: *a",
    "%TAG",
    "---\n",
    "...",
    "|",
    ">",
    "#",
    "\u0000",
    "\u202e",
    "\ud83d\ude00",
    "é",
    "1/0 in",
    "12 ft 6 in",
    "999999999999 mm",
    "°",
    "½",
    "$(x)",
    "../../etc",
    "x".repeat(3000),
    "?",
    ",",
    "\r\n",
    "\ufeff",
    "0x10",
    "1_000",
    "2026-02-30"
  };

  private Mutilated() {}

  /** A damaged copy; other texts are what pieces are taken from. */
  static byte[] of(byte[] text, List<byte[]> others, Random random) {
    byte[] now = text.clone();
    int times = 1 + random.nextInt(4);
    for (int i = 0; i < times; i++) {
      now = once(now, others.get(random.nextInt(others.size())), random);
    }
    return now;
  }

  private static byte[] once(byte[] text, byte[] other, Random random) {
    if (text.length == 0) {
      return other;
    }
    int from = random.nextInt(text.length);
    int to = Math.min(text.length, from + 1 + random.nextInt(40));
    return switch (random.nextInt(8)) {
      case 0 -> join(text, 0, from, new byte[0], text, to, text.length); // a piece is lost
      case 1 -> join(text, 0, from, word(random), text, from, text.length);
      case 2 -> join(text, 0, from, word(random), text, to, text.length);
      case 3 -> join(text, 0, to, new byte[0], text, from, text.length); // a piece stands twice
      case 4 -> join(text, 0, from, new byte[0], other, Math.min(from, other.length), other.length);
      case 5 -> join(text, 0, from, new byte[0], text, text.length, text.length); // cut off
      case 6 -> flipped(text, from, random);
      default -> lineMoved(text, random);
    };
  }

  private static byte[] word(Random random) {
    return WORDS[random.nextInt(WORDS.length)].getBytes(StandardCharsets.UTF_8);
  }

  private static byte[] flipped(byte[] text, int at, Random random) {
    byte[] flipped = text.clone();
    flipped[at] = (byte) random.nextInt(256);
    return flipped;
  }

  private static byte[] lineMoved(byte[] text, Random random) {
    String[] lines = new String(text, StandardCharsets.UTF_8).split("\n", -1);
    int one = random.nextInt(lines.length);
    int other = random.nextInt(lines.length);
    String kept = lines[one];
    lines[one] = lines[other];
    lines[other] = random.nextBoolean() ? kept : "  " + kept;
    return String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
  }

  private static byte[] join(byte[] first, int a, int b, byte[] middle, byte[] last, int c, int d) {
    ByteArrayOutputStream joined = new ByteArrayOutputStream();
    joined.write(first, a, b - a);
    joined.writeBytes(middle);
    joined.write(last, c, Math.max(0, d - c));
    return joined.toByteArray();
  }
}
