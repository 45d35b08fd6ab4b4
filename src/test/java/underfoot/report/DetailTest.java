package underfoot.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import underfoot.buildup.Severity;
import underfoot.knowledge.Phrases;
import underfoot.language.RuleForm;
import underfoot.plan.Advice;
import underfoot.plan.AdviceMaker;
import underfoot.plan.Justifier;
import underfoot.plan.Planner;
import underfoot.reasoning.Assessment;
import underfoot.reasoning.Floors;
import underfoot.reasoning.LayersBeside;
import underfoot.reasoning.WhatIf;
import underfoot.scenario.Scenario;

/** Reports in their short, normal and full forms, and those with drawings and links. */
class DetailTest {
  private static final Map<String, Advice> ADVICE = new TreeMap<>();

  @BeforeAll
  static void advise() throws Exception {
    for (Path file : Floors.examples()) {
      Scenario scenario = Floors.reader().read(file.toString(), Files.readAllBytes(file));
      Assessment assessment = Floors.advisor().advise(scenario);
      WhatIf whatIf = new WhatIf(Floors.advisor());
      Planner planner = new Planner(assessment.knowledge().prices());
      ADVICE.put(
          file.getFileName().toString(),
          AdviceMaker.make(
              assessment,
              whatIf.of(assessment),
              whatIf.unsaid(assessment),
              planner.of(assessment, new Justifier(scenario, assessment.knowledge()))));
    }
  }

  private static String text(Advice advice, Detail detail) {
    TextPage page = new TextPage(80, false);
    TextReport.write(advice, new Phrases(Floors.advisor().knowledge().wording()), detail, page);
    assertThat(page.text().lines()).allMatch(line -> TextPage.length(line) <= 80);
    return page.text();
  }

  private static int words(String text) {
    return text.replaceAll("[^\\p{L}\\p{N}\\s]", "").strip().split("\\s+").length;
  }

  @Test
  void the_short_form_is_less_than_the_normal_one_and_that_less_than_half_of_the_full_one() {
    int[] all = new int[Detail.values().length];
    ADVICE.forEach(
        (name, advice) -> {
          int brief = words(text(advice, Detail.SHORT));
          int usual = words(text(advice, Detail.NORMAL));
          int full = words(text(advice, Detail.FULL));
          assertThat(brief).as(name).isLessThan(usual);
          assertThat(usual).as(name).isLessThan(full);
          all[0] += brief;
          all[1] += usual;
          all[2] += full;
        });
    assertThat(3 * all[0]).isLessThan(2 * all[1]);
    assertThat(2.2 * all[1]).isLessThan(all[2]);
  }

  /** Floors of which nothing odd is said: what they read is as long as a letter, no more. */
  @Test
  void the_normal_form_of_a_usual_floor_has_five_to_seven_hundred_words() {
    for (String usual :
        List.of(
            "living-room-on-a-new-cement-screed",
            "cafe-where-the-opening-day-decides",
            "hall-where-the-budget-decides",
            "wet-room-on-a-concrete-slab",
            "cloakroom-over-existing-quarry-tiles")) {
      assertThat(words(text(ADVICE.get(usual + ".yaml"), Detail.NORMAL)))
          .as(usual)
          .isBetween(500, 700);
    }
  }

  /** Timber floors bring more dangers and gates, each whole: what was reached is held. */
  @Test
  void the_normal_form_of_timber_floors_grows_no_longer_than_it_is() {
    Map.of(
            "kitchen-on-tongue-and-groove-boards", 950,
            "upstairs-bathroom-on-chipboard", 990,
            "bathroom-on-i-joists", 950,
            "wet-room-on-an-upper-timber-floor", 1260,
            "limestone-on-joists-that-bend-too-far", 440)
        .forEach(
            (floor, most) ->
                assertThat(words(text(ADVICE.get(floor + ".yaml"), Detail.NORMAL)))
                    .as(floor)
                    .isLessThanOrEqualTo(most));
  }

  @Test
  void what_rules_several_ways_out_is_said_once_where_nothing_is_built() {
    ADVICE.forEach(
        (name, advice) -> {
          if (advice.builds()) {
            return;
          }
          String said = text(advice, Detail.NORMAL).replaceAll("\\s+", " ");
          long reasons =
              advice.alternatives().stream()
                  .filter(way -> way.standing() == Advice.Standing.RULED_OUT)
                  .map(Advice.Alternative::text)
                  .distinct()
                  .count();
          assertThat(said.split("Ruled out: ", -1)).as(name).hasSize((int) reasons + 1);
          advice
              .alternatives()
              .forEach(way -> assertThat(said).as(name).containsIgnoringCase(way.title()));
        });
  }

  /** What must be whole is as long as it is; all else is held to the length of a usual floor. */
  @Test
  void what_the_normal_form_says_besides_dangers_and_what_comes_first_is_short() {
    ADVICE.forEach(
        (name, advice) -> {
          if (!advice.builds()) {
            return;
          }
          int whole = 0;
          for (Advice.CautionNote caution : advice.cautions()) {
            if (caution.severity() == Severity.DANGER) {
              whole += words(caution.title() + " " + caution.parts().must());
            }
          }
          for (Advice.RemedyNote remedy : advice.remedies()) {
            whole += words(remedy.title() + " " + remedy.parts().must());
          }
          int besides = words(text(advice, Detail.NORMAL)) - whole;
          assertThat(besides - 75 * advice.layers().size()).as(name).isLessThan(600);
        });
  }

  @Test
  void the_normal_form_says_no_sentence_twice_but_what_heads_it() {
    ADVICE.forEach(
        (name, advice) -> {
          if (!advice.builds()) {
            return;
          }
          String said = text(advice, Detail.NORMAL).replaceAll("\\s+", " ");
          for (Advice.Layer layer : advice.layers()) {
            layer.spec().stream()
                .filter(say -> !say.general() && words(say.parts().must()) > 8)
                .forEach(
                    say ->
                        assertThat(said.split(Pattern.quote(say.parts().must()), -1).length)
                            .as(name + ": " + say.parts().must())
                            .isLessThanOrEqualTo(2));
          }
        });
  }

  @Test
  void the_reasons_left_to_the_full_form_are_rules_that_lay_a_layer() {
    java.util.Set<String> laid = new java.util.HashSet<>();
    ADVICE
        .values()
        .forEach(
            advice ->
                advice
                    .layers()
                    .forEach(layer -> layer.reasons().forEach(why -> laid.add(why.rule().id()))));
    assertThat(laid).containsAll(Floors.advisor().knowledge().generalReasons());
  }

  @Test
  void joints_are_closed_a_little_where_tiles_would_be_cut_a_little_short_of_whole() {
    var tiles =
        ADVICE
            .get("l-shaped-kitchen-with-a-chimney-breast-and-two-doors.yaml")
            .consequences()
            .setOut()
            .orElseThrow()
            .tiles()
            .orElseThrow();
    assertThat(tiles.closedBy()).isBetween(0.1, 0.5);
    assertThat(tiles.layout().walls().get(0).sizes()).isEmpty();
    var kitchen =
        ADVICE
            .get("kitchen-on-tongue-and-groove-boards.yaml")
            .consequences()
            .setOut()
            .orElseThrow()
            .tiles()
            .orElseThrow();
    assertThat(kitchen.closedBy()).isZero();
  }

  @Test
  void no_form_hides_a_danger_a_stop_or_what_comes_first() {
    ADVICE.forEach(
        (name, advice) -> {
          for (Detail detail : Detail.values()) {
            String said = text(advice, detail).replaceAll("\\s+", " ");
            advice.cautions().stream()
                .filter(caution -> caution.severity() == Severity.DANGER)
                .forEach(
                    caution ->
                        assertThat(said)
                            .as(name)
                            .contains(caution.title())
                            .contains(caution.parts().must()));
            advice.remedies().forEach(one -> assertThat(said).as(name).contains(one.title()));
            advice.remedies().stream()
                .filter(one -> one.hold() || detail.compareTo(Detail.NORMAL) >= 0)
                .forEach(one -> assertThat(said).as(name).contains(one.parts().must()));
            advice
                .stopFindings()
                .forEach(one -> assertThat(said).as(name).contains(one.parts().must()));
            advice.layers().forEach(one -> assertThat(said).as(name).contains(one.name()));
          }
        });
  }

  @Test
  void the_short_reasons_are_the_rules_at_the_root_of_the_full_ones() {
    Advice advice = ADVICE.get("utility-room-over-a-cellar-on-old-boards.yaml");
    List<Advice.Decision> bed = WhyReport.find(advice, "tile-bed");
    Map<Detail, String> said = new TreeMap<>();
    for (Detail detail : Detail.values()) {
      TextPage page = new TextPage(80, false);
      WhyReport.write(bed, Floors.advisor().knowledge(), detail, page);
      said.put(detail, page.text());
      bed.get(0)
          .because()
          .forEach(why -> assertThat(page.text()).contains("‹" + why.rule().id() + "›"));
    }
    assertThat(words(said.get(Detail.SHORT))).isLessThan(words(said.get(Detail.NORMAL)) / 2);
    assertThat(words(said.get(Detail.NORMAL))).isLessThan(words(said.get(Detail.FULL)));
    assertThat(said.get(Detail.NORMAL)).contains("as shown above");
  }

  @Test
  void the_drawing_of_a_chain_is_whole_and_no_box_lies_upon_another() throws Exception {
    for (Advice advice : ADVICE.values()) {
      for (Advice.Decision decision : advice.decisions()) {
        HtmlWriter out = new HtmlWriter();
        ChainPicture.draw(decision, "(goes on)", "chain-1", out);
        Element svg = parse(out.toString());
        String[] view = svg.getAttribute("viewBox").split(" ");
        List<double[]> boxes = new ArrayList<>();
        NodeList rects = svg.getElementsByTagName("rect");
        for (int i = 0; i < rects.getLength(); i++) {
          Element rect = (Element) rects.item(i);
          double[] box = {
            number(rect, "x"), number(rect, "y"), number(rect, "width"), number(rect, "height")
          };
          assertThat(box[0] + box[2]).isLessThanOrEqualTo(Double.parseDouble(view[2]));
          assertThat(box[1] + box[3]).isLessThanOrEqualTo(Double.parseDouble(view[3]));
          for (double[] other : boxes) {
            boolean apart =
                box[0] + box[2] <= other[0]
                    || other[0] + other[2] <= box[0]
                    || box[1] + box[3] <= other[1] + 0.2
                    || other[1] + other[3] <= box[1] + 0.2;
            assertThat(apart).as(decision.id()).isTrue();
          }
          boxes.add(box);
        }
        assertThat(boxes.size()).as(decision.id()).isGreaterThan(1);
      }
    }
  }

  private static double number(Element element, String name) {
    return Double.parseDouble(element.getAttribute(name));
  }

  private static Element parse(String xml) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(xml)))
        .getDocumentElement();
  }

  @Test
  void the_page_of_reasons_links_only_to_what_is_on_it() {
    Advice advice = ADVICE.get("utility-room-over-a-cellar-on-old-boards.yaml");
    linksLead(WhyPage.html(advice, advice.decisions(), Floors.advisor().knowledge()));
  }

  @Test
  void the_book_has_every_rule_once_and_links_only_to_what_is_in_it() throws Exception {
    List<RuleForm> rules = Floors.advisor().rules().set().forms();
    RuleUses uses = new RuleUses();
    uses.add("A <floor>", List.of("OVER-50"), List.of("OVER-50"));
    String book =
        RulesBook.html(
            rules,
            Floors.advisor().knowledge(),
            uses,
            new BesideReport(
                new LayersBeside(Floors.advisor().rules(), Floors.advisor().knowledge()),
                Floors.advisor().knowledge()));
    for (RuleForm rule : rules) {
      assertThat(book.split("id=\"" + rule.note().id() + "\"", -1)).as(rule.note().id()).hasSize(2);
    }
    linksLead(onlyTheScriptItsPolicyNames(book));
    assertThat(book).contains("A &lt;floor&gt;").contains("except when");
  }

  /** The book without its one script, which its policy names by what it is. */
  private static String onlyTheScriptItsPolicyNames(String book) throws Exception {
    int from = book.indexOf("<script>") + "<script>".length();
    int to = book.indexOf("</script>");
    String script = book.substring(from, to);
    byte[] hash =
        MessageDigest.getInstance("SHA-256").digest(script.getBytes(StandardCharsets.UTF_8));
    assertThat(book)
        .contains("script-src &#39;sha256-" + Base64.getEncoder().encodeToString(hash) + "&#39;");
    assertThat(script).doesNotContain("fetch", "XMLHttp", "innerHTML", "import", "eval", "http");
    return book.substring(0, from - "<script>".length())
        + book.substring(to + "</script>".length());
  }

  private static void linksLead(String html) {
    Matcher ids = Pattern.compile(" id=\"([^\"]+)\"").matcher(html);
    java.util.Set<String> there = new java.util.HashSet<>();
    while (ids.find()) {
      assertThat(there.add(ids.group(1))).as("id " + ids.group(1)).isTrue();
    }
    Matcher links = Pattern.compile("href=\"([^\"]+)\"").matcher(html);
    int count = 0;
    while (links.find()) {
      count++;
      assertThat(links.group(1)).startsWith("#");
      assertThat(there).contains(links.group(1).substring(1));
    }
    assertThat(count).isPositive();
    assertThat(html).doesNotContain("<script", "http:", "https:", "url(");
  }
}
