package underfoot.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Amounts as people say them. */
class SpokenTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "34.03 mm|34 mm", "14.77 %|15 %", "33.4 days|33 days", "2.5 mm|2.5 mm", "7.62 mm|7.5 mm",
        "0.31 %|0.3 %", "54.58 kg|55 kg", "18.4 C|18 C", "211.68 mL|212 mL", "4.81 days|5 days",
        "12.43 kg/m2|12 kg/m2"
      })
  void an_amount_is_told_no_finer_than_anybody_can_use_it(String exact, String said) {
    assertThat(Spoken.of("it is " + exact + ", as worked out"))
        .isEqualTo("it is " + said + ", as worked out");
  }

  @Test
  void what_is_no_such_amount_stays_as_it_is() {
    for (String words :
        new String[] {"0.1 mg/m3", "1.5 kN/m2", "edition 5.2", "12 mm", "0.004 mm", "span/360"}) {
      assertThat(Spoken.of(words)).isEqualTo(words);
    }
  }
}
