package underfoot.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ReportFilesTest {
  private static final String ROOM =
      "scenarios/l-shaped-kitchen-with-a-chimney-breast-and-two-doors.yaml";
  private static final String BREAK_OUT =
      "src/test/browser/scenarios/names-that-try-to-break-out.yaml";

  private static Document parsed(String page) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(page.getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void the_page_is_well_formed_and_shows_section_levels_boards_tiles_and_programme(
      @TempDir Path dir) throws Exception {
    Path file = dir.resolve("page.html");
    Console.Ran ran = Console.run("advise", ROOM, "--html", file.toString());
    assertThat(ran.exit()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).endsWith("Written: " + file + "\n");
    Document page = parsed(Files.readString(file));
    NodeList drawings = page.getElementsByTagName("svg");
    List<String> drawn = new ArrayList<>();
    for (int i = 0; i < drawings.getLength(); i++) {
      String named = ((Element) drawings.item(i)).getAttribute("aria-labelledby");
      drawn.add(named.split("[ -]")[0]);
    }
    assertThat(drawn)
        .contains("section", "levels", "boards", "tiles", "programme", "trowel", "piece");
    assertThat(drawn.stream().filter(one -> !one.equals("trowel") && !one.equals("piece")))
        .hasSize(5);
    assertThat(page.getElementsByTagName("script").getLength()).isZero();
    assertThat(Files.list(dir)).as("nothing is left beside it").containsExactly(file);
  }

  @Test
  void words_of_a_scenario_are_text_and_nothing_else() throws Exception {
    Console.Ran ran = Console.run("advise", BREAK_OUT, "--html", "-");
    assertThat(ran.exit()).isZero();
    Document page = parsed(ran.out());
    assertThat(page.getElementsByTagName("script").getLength()).isZero();
    assertThat(page.getElementsByTagName("img").getLength()).isZero();
    assertThat(page.getElementsByTagName("h1").item(0).getTextContent())
        .startsWith("</title><script>document.title='broken'</script> & \"quoted\" 'single'");
    NodeList all = page.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      for (int k = 0; k < all.item(i).getAttributes().getLength(); k++) {
        assertThat(all.item(i).getAttributes().item(k).getNodeName()).doesNotStartWith("on");
      }
    }
  }

  @Test
  void the_pdf_has_pages_of_text(@TempDir Path dir) throws Exception {
    Path file = dir.resolve("page.pdf");
    Console.Ran ran = Console.run("advise", ROOM, "--pdf", file.toString());
    assertThat(ran.exit()).isZero();
    assertThat(ran.err()).isEmpty();
    try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
      assertThat(pdf.getNumberOfPages()).isBetween(8, 26);
      String text = new PDFTextStripper().getText(pdf);
      assertThat(text)
          .contains("L-shaped kitchen with a chimney breast and two doors")
          .contains("Markers, to take to site")
          .contains("Cut list")
          .contains("Where to start");
    }
  }

  @Test
  void words_that_no_typeface_has_do_not_stop_the_pdf(@TempDir Path dir) {
    Path file = dir.resolve("page.pdf");
    assertThat(Console.run("advise", BREAK_OUT, "--pdf", file.toString()).exit()).isZero();
    assertThat(file).isNotEmptyFile();
  }

  @Test
  void a_place_that_cannot_be_written_to_is_said_before_anything_is_done(@TempDir Path dir)
      throws Exception {
    Console.Ran folder = Console.run("advise", ROOM, "--html", dir.toString());
    assertThat(folder.exit()).isEqualTo(2);
    assertThat(folder.err()).contains("is a folder; name a file to write");
    Console.Ran nowhere =
        Console.run("advise", ROOM, "--pdf", dir.resolve("no/where.pdf").toString());
    assertThat(nowhere.exit()).isEqualTo(2);
    assertThat(nowhere.err()).contains("There is no folder to write");
    Console.Ran both = Console.run("advise", ROOM, "--html", "-", "--json");
    assertThat(both.exit()).isEqualTo(2);
    assertThat(Files.list(dir)).isEmpty();
  }

  @Test
  void a_scenario_with_faults_leaves_the_old_page_alone(@TempDir Path dir) throws Exception {
    Path file = dir.resolve("page.html");
    Files.writeString(file, "the old page");
    Console.Ran ran =
        Console.run(
            "scenario: x\n".getBytes(StandardCharsets.UTF_8),
            Map.of(),
            false,
            "advise",
            "-",
            "--html",
            file.toString(),
            "--replace");
    assertThat(ran.exit()).isEqualTo(3);
    assertThat(file).hasContent("the old page");
  }

  @Test
  void what_the_set_out_counts_is_what_is_bought() {
    JsonNode json = JsonMapper.shared().readTree(Console.run("advise", ROOM, "--json").out());
    JsonNode tiles = json.get("setOut").get("tiles");
    JsonNode boards = json.get("setOut").get("boards").get(0);
    double face = tiles.get("lengthMm").asDouble() * tiles.get("widthMm").asDouble() / 1e6;
    assertThat(amount(json, "tiles")).isCloseTo(tiles.get("toOrder").asInt() * face, within(1e-6));
    assertThat(tiles.get("toOrder").asInt())
        .isEqualTo((int) Math.ceil(tiles.get("tiles").asInt() * 1.05));
    double board = boards.get("lengthMm").asDouble() * boards.get("widthMm").asDouble() / 1e6;
    assertThat(amount(json, "foam-core tile board"))
        .isCloseTo(boards.get("boards").asInt() * board, within(1e-6));
    assertThat(amount(json, "screws with washers"))
        .isCloseTo(boards.get("screws").asInt() * 1.08, within(1e-6));
    assertThat(boards.get("offDeckJointsMm").asDouble()).isGreaterThanOrEqualTo(50);
    assertThat(tiles.get("because")).isNotEmpty();
    assertThat(boards.get("because")).isNotEmpty();
    assertThat(tiles.get("noneBetter").asBoolean()).isTrue();
  }

  private static double amount(JsonNode json, String item) {
    for (JsonNode line : json.get("quantities")) {
      if (line.get("item").asString().equals(item)) {
        return line.get("amount").asDouble();
      }
    }
    throw new AssertionError("nothing is bought of " + item);
  }
}
