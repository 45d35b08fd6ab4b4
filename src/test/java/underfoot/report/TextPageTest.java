package underfoot.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import underfoot.report.TextPage.Tone;

class TextPageTest {
  @Test
  void lines_break_between_words_and_long_words_are_cut() {
    assertThat(TextPage.wrap("one two three", 7, 7)).isEqualTo(List.of("one two", "three"));
    assertThat(TextPage.wrap("abcdefghij k", 4, 4)).isEqualTo(List.of("abcd", "efgh", "ij k"));
    assertThat(TextPage.wrap("ab abcdefghij", 4, 4)).isEqualTo(List.of("ab", "abcd", "efgh", "ij"));
    assertThat(TextPage.wrap("abcd", 4, 4)).isEqualTo(List.of("abcd"));
    assertThat(TextPage.wrap("", 4, 4)).isEqualTo(List.of(""));
  }

  @Test
  void the_first_line_may_have_less_room_than_the_rest() {
    assertThat(TextPage.wrap("one two three", 3, 9)).isEqualTo(List.of("one", "two three"));
  }

  @Test
  void a_character_outside_the_basic_plane_counts_as_one_and_is_not_split() {
    assertThat(TextPage.wrap("😀😀😀", 2, 2)).isEqualTo(List.of("😀😀", "😀"));
  }

  @Test
  void a_page_is_never_too_narrow_to_lay_out() {
    assertThat(new TextPage(3, false).width()).isEqualTo(TextPage.LEAST_WIDTH);
    assertThat(new TextPage(3000, false).width()).isEqualTo(TextPage.MOST_WIDTH);
  }

  @Test
  void there_is_at_most_one_empty_line_between_paragraphs_and_none_at_the_top() {
    TextPage page = new TextPage(80, false);
    page.blank();
    page.para("a");
    page.blank();
    page.blank();
    page.para("b");
    assertThat(page.text()).isEqualTo("a\n\nb\n");
  }

  @Test
  void colours_do_not_count_towards_the_width() {
    TextPage plain = new TextPage(40, false);
    TextPage coloured = new TextPage(40, true);
    String words = "Many words that fill more than one line of forty columns ‹RULE-01›";
    plain.para(" - ", "   ", words, Tone.PLAIN);
    coloured.para(" - ", "   ", words, Tone.PLAIN);
    assertThat(coloured.text()).contains("\u001b[2m‹RULE-01›\u001b[0m");
    assertThat(coloured.text().replaceAll("\u001b\\[[0-9;]*m", "")).isEqualTo(plain.text());
  }
}
