package underfoot.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import underfoot.buildup.Severity;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Headlines;
import underfoot.knowledge.Knowledge;
import underfoot.knowledge.Phrases;
import underfoot.knowledge.TextParts;
import underfoot.language.Effect;
import underfoot.language.Effect.Place;
import underfoot.language.Effect.Verb;
import underfoot.language.Rule;
import underfoot.plan.Advice;
import underfoot.plan.Advice.CautionNote;
import underfoot.plan.AdviceMaker;
import underfoot.plan.Justifier;
import underfoot.plan.Planner;
import underfoot.plan.ShoppingLine;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.Floors;
import underfoot.reasoning.WhatIf;

/** What stands first, what each form holds, and what is on the list for the shop. */
class FirstThingsFirstTest {
  private static final int SCREEN = 24;
  private static final Knowledge KNOWLEDGE = Floors.advisor().knowledge();
  private static final Phrases PHRASES = new Phrases(KNOWLEDGE.wording());
  private static final Map<String, Advice> ADVICE = new TreeMap<>();

  @BeforeAll
  static void advise() throws Exception {
    Planner planner = new Planner(KNOWLEDGE.prices());
    for (Path file : Floors.examples()) {
      Assessment assessment =
          Floors.advisor().advise(Floors.reader().read(file.toString(), Files.readAllBytes(file)));
      Justifier justifier = new Justifier(assessment.scenario(), assessment.knowledge());
      ADVICE.put(
          file.getFileName().toString().replace(".yaml", ""),
          AdviceMaker.make(
              assessment, WhatIf.assumed(assessment), planner.of(assessment, justifier)));
    }
  }

  private static String text(Advice advice, Detail detail) {
    TextPage page = new TextPage(80, false);
    TextReport.write(advice, PHRASES, detail, page);
    return page.text();
  }

  private static String headline(String floor) {
    return ADVICE.get(floor).first().headline();
  }

  @Test
  void the_gravest_thing_heads_the_answer() {
    assertThat(headline("hall-with-old-thermoplastic-tiles-on-a-slab"))
        .isEqualTo("Do not touch this floor until it has been sampled for asbestos.");
    assertThat(headline("limestone-on-joists-that-bend-too-far"))
        .isEqualTo("The joists would not carry this floor: have an engineer look first.");
    assertThat(headline("pantry-with-rotten-joist-ends")).startsWith("The timber is rotten");
    assertThat(headline("kitchen-of-old-quarry-tiles-on-earth")).contains("bare earth");
    assertThat(headline("wet-room-on-a-concrete-slab")).isEqualTo("Build it.");
  }

  @Test
  void every_answer_has_a_headline_that_rests_on_what_it_says() {
    ADVICE.forEach(
        (name, advice) -> {
          assertThat(advice.first().headline()).as(name).isNotBlank().endsWith(".");
          assertThat(advice.first().headline()).as(name).doesNotContain("[", "<");
          assertThat(advice.first().doNow()).as(name).hasSizeLessThanOrEqualTo(3);
          String of = advice.first().headlineOf();
          if (!of.isEmpty()) {
            assertThat(advice.decisions()).as(name).anyMatch(one -> one.id().equals(of));
          }
          if (advice.verdict() == Verdict.STOP) {
            assertThat(advice.first().headline()).as(name).doesNotStartWith("Build");
          }
        });
  }

  /** A finding or a gate for which no row has its own sentence is headed by its bare title. */
  @Test
  void every_stop_and_every_gate_of_the_rules_has_a_sentence_of_its_own() {
    Set<String> without = new TreeSet<>();
    Headlines headlines = KNOWLEDGE.headlines();
    for (Rule rule : Floors.advisor().rules().set().rules()) {
      for (Effect effect : rule.effects()) {
        if (!Set.of(Verb.STOP, Verb.OUTSIDE, Verb.HOLD).contains(effect.verb())) {
          continue;
        }
        String wording = effect.word(Place.WORDING);
        boolean named = headlines.rows().stream().anyMatch(row -> row.on().contains(wording));
        if (!named && KNOWLEDGE.wording().ids().contains(wording)) {
          without.add(wording);
        }
      }
    }
    // These say what to measure before a thing is chosen; their titles say so.
    without.removeAll(
        Set.of("gap-measured", "leaf-looked-at", "sill-measured", "drain-question-answered"));
    assertThat(without).isEmpty();
  }

  @Test
  void all_that_can_hurt_and_every_gate_is_named_in_the_first_lines_of_each_form() {
    ADVICE.forEach(
        (name, advice) -> {
          for (Detail detail : Detail.values()) {
            List<String> lines = text(advice, detail).lines().limit(SCREEN).toList();
            String screen = String.join(" ", lines).replaceAll("\\s+", " ").toLowerCase();
            for (CautionNote caution : advice.cautions()) {
              if (caution.severity() == Severity.DANGER) {
                assertThat(screen).as(name + detail).contains(caution.title().toLowerCase());
              }
            }
            advice
                .first()
                .alsoFirst()
                .forEach(gate -> assertThat(screen).as(name).contains(gate.toLowerCase()));
            advice
                .first()
                .doNow()
                .forEach(now -> assertThat(screen).as(name).contains(now.text().toLowerCase()));
          }
        });
  }

  @Test
  void every_form_has_its_gates_whole_and_its_dangers_before_the_build_up() {
    ADVICE.forEach(
        (name, advice) -> {
          for (Detail detail : Detail.values()) {
            String said = text(advice, detail).replaceAll("\\s+", " ");
            advice.remedies().stream()
                .filter(Advice.RemedyNote::hold)
                .forEach(one -> assertThat(said).as(name).contains(one.parts().must()));
            int built = said.indexOf("Layer by layer");
            for (CautionNote caution : advice.cautions()) {
              if (caution.severity() == Severity.DANGER && built > 0) {
                assertThat(said.indexOf(caution.parts().part(TextParts.INSTEAD)))
                    .as(name + detail)
                    .isBetween(0, built);
              }
            }
          }
        });
  }

  @Test
  void the_sheet_for_the_site_has_what_is_asked_for_and_set() {
    String sheet =
        text(ADVICE.get("kitchen-on-tongue-and-groove-boards"), Detail.SITE)
            .replaceAll("\\s+", " ");
    assertThat(sheet)
        .contains("adhesive class C2 S1 or better", "square notch of 10 mm", "screws of 25 mm")
        .contains("joints of 4 mm", "adhesive over", "Hall door", "The first tile is laid");
  }

  @Test
  void the_list_agrees_with_what_was_worked_out() {
    ADVICE.forEach(
        (name, advice) -> {
          List<ShoppingLine> list = advice.consequences().shopping();
          advice
              .consequences()
              .quantities()
              .forEach(
                  line ->
                      assertThat(list)
                          .as(name + ": " + line.item())
                          .anyMatch(
                              one ->
                                  one.item().equals(line.item())
                                      && Double.compare(one.amount(), line.amount()) == 0
                                      && one.packs() == line.packs()));
          for (ShoppingLine line : list) {
            assertThat(line.kind()).as(name + line.item()).doesNotContain("[", "{");
            if (line.packs() > 0) {
              assertThat(line.packs() * line.pack())
                  .as(line.item())
                  .isGreaterThan(line.amount() - 1e-6);
            }
          }
        });
  }

  @Test
  void boxes_hold_the_tiles_that_were_counted() {
    ADVICE.forEach(
        (name, advice) ->
            advice
                .consequences()
                .setOut()
                .flatMap(one -> one.tiles())
                .ifPresent(
                    tiles ->
                        assertThat(advice.consequences().shopping())
                            .filteredOn(line -> line.item().equals("tiles"))
                            .allMatch(
                                line -> (long) line.packs() * line.pieces() >= tiles.toOrder())));
  }

  @Test
  void everything_that_is_bought_is_on_a_shelf() {
    KNOWLEDGE
        .materials()
        .all()
        .forEach(
            item -> assertThat(KNOWLEDGE.shopping().find(item.item())).as(item.item()).isPresent());
  }

  @Test
  void a_danger_is_bought_against() {
    Advice kitchen = ADVICE.get("kitchen-on-tongue-and-groove-boards");
    assertThat(kitchen.consequences().shopping())
        .extracting(ShoppingLine::item)
        .contains("mask", "gloves", "residual current device", "notched trowel", "spacers");
  }

  @Test
  void the_table_of_the_list_has_as_many_cells_in_each_row_and_no_formula() {
    String csv =
        ShoppingText.csv(
            ADVICE.get("kitchen-on-tongue-and-groove-boards").consequences().shopping(), PHRASES);
    for (String row : csv.split("\r\n")) {
      assertThat(row.replaceAll("\"[^\"]*\"", "").split(",", -1)).as(row).hasSize(9);
      assertThat(row).doesNotContainPattern("(^|,)[=+@]");
    }
  }

  @Test
  void what_holds_on_every_floor_is_said_on_many() {
    int built = (int) ADVICE.values().stream().filter(Advice::builds).count();
    for (String general : List.of("pva-never", "mix-exactly", "check-gap", "movement-perimeter")) {
      long on =
          ADVICE.values().stream()
              .filter(one -> one.cautions().stream().anyMatch(c -> c.id().startsWith(general)))
              .count();
      assertThat(on).as(general).isGreaterThan(built / 2);
    }
    ADVICE.forEach(
        (name, advice) ->
            assertThat(advice.cautions())
                .filteredOn(CautionNote::general)
                .noneMatch(one -> one.severity() == Severity.DANGER));
  }
}
