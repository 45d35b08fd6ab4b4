package underfoot.working;

import java.util.Random;

/** Random input that can be had again: the seed is printed, and set with {@code -Dseed=N}. */
final class Seeded {
  static final long SEED = Long.getLong("seed", 20_260_101L);
  static final int ROUNDS = 200;

  private Seeded() {}

  static Random random() {
    System.out.println("seed " + SEED + " (set another with -Dseed=N)");
    return new Random(SEED);
  }

  static double between(Random random, double least, double most) {
    return least + random.nextDouble() * (most - least);
  }

  static String seed(int round) {
    return "seed " + SEED + ", round " + round;
  }
}
