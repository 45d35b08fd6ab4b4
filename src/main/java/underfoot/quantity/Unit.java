package underfoot.quantity;

import java.util.List;

/**
 * A unit a quantity may be written in. The value in the base unit is {@code (number + offset) *
 * factor}.
 *
 * @param symbol how the unit is printed, such as {@code mm}
 * @param factor how many base units one of this unit is
 * @param offset what is added before the factor is applied; 0 for all but temperatures
 * @param spellings other ways to write it, in lower case
 */
public record Unit(String symbol, double factor, double offset, List<String> spellings) {
  static Unit of(String symbol, double factor, String... spellings) {
    return new Unit(symbol, factor, 0, List.of(spellings));
  }
}
