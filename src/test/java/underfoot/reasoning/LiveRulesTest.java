package underfoot.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import underfoot.knowledge.Fact;
import underfoot.knowledge.Unknown;
import underfoot.language.RuleFaults;
import underfoot.language.RuleSet;
import underfoot.scenario.RuleFiles;

/** Of what is shown to a pass, only what rules that could fire can match is told apart. */
class LiveRulesTest {
  private static final Fact BATH = fact("bath", "yes");
  private static final Unknown STAIRS = new Unknown("room.stairs", "stairs", "");

  @TempDir private Path folder;

  private static Fact fact(String name, String value) {
    return Fact.stated(name, name, "", value, Double.NaN);
  }

  private LiveRules rules(String... rules) throws Exception {
    write(
        "vocabulary/a.dsl",
        "[condition][]The {name} is {value}=Fact( says == \"{name}: {value}\" )",
        "[condition][]The {name} is unknown=Unknown( name == \"{name}\" )",
        "[condition][]Nobody knows of stairs or a bath=exists Unknown( name in ( \"stairs\", \"bath\" ) )",
        "[condition][]The {name} is not {value}=not Fact( says == \"{name}: {value}\" )",
        "[condition][]Rule {rule} holds=exists Conclusion( rule == \"{rule}\" )",
        "[consequence][]The {name} becomes {value}=conclude( \"{name}\", \"\", \"{value}\" )",
        "[consequence][]What its row says holds of the {name}=rows( \"{name}\" )",
        "[consequence][]Note {wording}=note( \"{wording}\", \"\" )");
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < rules.length; i++) {
      String[] parts = rules[i].split(" => ");
      lines.add("rule \"TRY-0" + (i + 1) + " a rule\"");
      lines.add("@reason(\"So it is\")");
      lines.add("@source(\"trade\")");
      lines.add("when");
      lines.addAll(List.of(parts[0].split("; ")));
      lines.add("then");
      lines.addAll(List.of(parts[1].split("; ")));
      lines.add("end");
    }
    write("judge/10-test.dslr", lines.toArray(new String[0]));
    List<RuleFaults.Fault> faults = new ArrayList<>();
    RuleSet set = RuleSet.read(RuleFiles.of(folder), faults);
    assertThat(faults).isEmpty();
    return new LiveRules(set.rules(), new FactFilter(set.rules()));
  }

  private void write(String path, String... lines) throws Exception {
    Path file = folder.resolve(path);
    Files.createDirectories(file.getParent());
    Files.write(file, List.of(lines));
  }

  private static List<Object> matched(LiveRules rules, Object... shown) {
    return rules.matched(Floors.advisor().knowledge().kinds(), List.of(shown));
  }

  @Test
  void what_a_rule_asks_besides_what_is_not_there_is_left_out() throws Exception {
    LiveRules rules = rules("The use is wet room; The stairs is unknown => Note a");
    assertThat(matched(rules, fact("use", "hall"), STAIRS)).isEmpty();
    assertThat(matched(rules, fact("use", "wet room"), STAIRS)).hasSize(2);
  }

  @Test
  void what_another_rule_may_conclude_is_taken_to_be_there() throws Exception {
    LiveRules rules =
        rules(
            "The use is wet room; The stairs is unknown => Note a",
            "The bath is yes => The use becomes wet room");
    assertThat(matched(rules, BATH, STAIRS)).containsExactly(BATH, STAIRS);
    assertThat(matched(rules, fact("bath", "no"), STAIRS)).isEmpty();
  }

  @Test
  void what_must_not_be_there_is_told_apart_where_the_rule_could_fire() throws Exception {
    LiveRules rules = rules("The bath is yes; The use is not hall => Note a");
    Fact hall = fact("use", "hall");
    assertThat(matched(rules, BATH, hall)).containsExactly(BATH, hall);
    assertThat(matched(rules, hall)).isEmpty();
    assertThat(matched(rules, BATH, fact("use", "kitchen"))).containsExactly(BATH);
  }

  @Test
  void one_of_several_unknowns_will_do() throws Exception {
    LiveRules rules = rules("Nobody knows of stairs or a bath => Note a");
    Unknown other = new Unknown("room.shower", "shower", "");
    assertThat(matched(rules, STAIRS, other)).containsExactly(STAIRS);
  }

  @Test
  void a_rule_may_wait_for_another_rule() throws Exception {
    LiveRules rules =
        rules("The bath is yes => Note a", "Rule TRY-01 holds; The stairs is unknown => Note b");
    assertThat(matched(rules, BATH, STAIRS)).containsExactly(BATH, STAIRS);
    assertThat(matched(rules, STAIRS)).isEmpty();
  }

  @Test
  void what_the_row_of_a_kind_says_is_taken_to_be_there_for_that_kind_alone() throws Exception {
    LiveRules rules =
        rules(
            "The base is concrete slab => What its row says holds of the base",
            "The base family is solid; The stairs is unknown => Note a",
            "The base family is timber; The bath is unknown => Note b");
    Fact slab = fact("base", "concrete slab");
    Unknown bath = new Unknown("room.bath", "bath", "");
    String family =
        Floors.advisor().knowledge().kinds().of("base", "concrete slab").stream()
            .filter(said -> said.called().equals("base family"))
            .findFirst()
            .orElseThrow()
            .value();
    assertThat(family).isEqualTo("solid");
    assertThat(matched(rules, slab, STAIRS, bath)).containsExactly(slab, STAIRS);
  }
}
