package underfoot.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import tools.jackson.core.json.JsonWriteFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;
import tools.jackson.databind.json.JsonMapper;
import underfoot.reasoning.Floors;
import underfoot.scenario.Answers;
import underfoot.scenario.FactBook;

/** The page answers itself and refuses everybody else. */
class PageServerTest {
  private static PageServer server;
  private static URI at;

  @BeforeAll
  static void serve() throws Exception {
    Environment around =
        new Environment(
            new ByteArrayInputStream(new byte[0]), Map.of(), false, () -> Floors.advisor().rules());
    CommandContext bench = new CommandContext(null, null, around);
    server = new PageServer(new PageApi(bench, bench.conversation().begun()), 0, bench.facts());
    at = URI.create(server.address());
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  @Test
  void the_page_and_its_parts_are_served_and_ask_nothing_of_other_machines() throws Exception {
    for (String part :
        new String[] {"", "page.js", "plan.js", "doors.js", "page.css", "report.css"}) {
      String answer = get(at.getPath() + part, host(), "");
      assertThat(answer).startsWith("HTTP/1.1 200").contains("default-src 'none'");
      String body = answer.substring(answer.indexOf("\r\n\r\n"));
      assertThat(body.replace("http://www.w3.org/2000/svg", ""))
          .doesNotContain("http://", "https:");
    }
  }

  @Test
  void answers_are_thought_through_and_given_back_as_a_file_that_reads_back() throws Exception {
    String answers =
        "{\"answers\":{\"room.use\":\"bathroom\",\"subfloor.deck\":\"square-edged boards\","
            + "\"tile.material\":\"porcelain\",\"tile.length\":\"600 mm\",\"tile.width\":\"oops\","
            + "\"scenario\":\"Mine\"},\"taken\":{\"subfloor.deck\":\"of those it asks for the most\"}}";
    assertThat(post("advice", answers, origin())).startsWith("HTTP/1.1 200").contains("tile.width");
    String whole = answers.replace("oops", "600 mm");
    assertThat(post("advice", whole, origin())).contains("sound-once-put-right", "<svg");
    assertThat(post("file", whole, origin()))
        .contains("deck: square-edged boards", "Not certain; taken so: of those it asks");
    String said = "{\"place\":\"subfloor.deck\",\"words\":\"lino on floorboards\",\"answers\":{}}";
    assertThat(post("say", said, origin()))
        .contains("\"subfloor.beneath\" : \"square-edged boards\"");
    assertThat(post("open", "{\"file\":\"room: {use: hall}\"}", origin())).contains("\"hall\"");
    assertThat(post("open", "{\"file\":\"room: {use: pond}\"}", origin())).contains("wrong");
    assertThat(post("advice", "not json", origin())).startsWith("HTTP/1.1 200");
  }

  @Test
  void the_sheet_the_list_and_the_whole_advice_are_given_to_be_taken_along() throws Exception {
    String answers =
        "{\"answers\":{\"room.use\":\"hall\",\"subfloor.deck\":\"concrete slab\","
            + "\"tile.material\":\"porcelain\",\"tile.length\":\"600 mm\",\"tile.width\":\"600 mm\"}}";
    for (String[] one :
        new String[][] {
          {"sheet", "sheet.pdf", "%PDF"},
          {"list", "list.pdf", "%PDF"},
          {"share", "advice.html", "<!DOCTYPE html>"},
        }) {
      String answer = post(one[0], answers, origin());
      assertThat(answer).startsWith("HTTP/1.1 200").contains("\"" + one[1] + "\"");
      String bytes = answer.replaceFirst("(?s)^.*\"bytes\" : \"([^\"]*)\".*$", "$1");
      byte[] file = Base64.getDecoder().decode(bytes.replaceAll("\\s", ""));
      assertThat(new String(file, StandardCharsets.ISO_8859_1)).startsWith(one[2]);
      assertThat(post(one[0], "{\"answers\":{\"room.use\":\"hall\"}}", origin()))
          .startsWith("HTTP/1.1 200")
          .doesNotContain("bytes");
    }
  }

  @Test
  void an_opened_floor_with_parts_is_given_back_with_all_it_says_of_them() throws Exception {
    byte[] floor =
        Files.readAllBytes(Path.of("scenarios/kitchen-where-an-extension-meets-boards.yaml"));
    ObjectMapper json = JsonMapper.builder().enable(JsonWriteFeature.ESCAPE_NON_ASCII).build();
    String asked =
        json.writeValueAsString(Map.of("file", new String(floor, StandardCharsets.UTF_8)));
    JsonNode opened = json.readTree(body(post("open", asked, origin())));
    String again = body(post("file", json.writeValueAsString(opened), origin()));
    byte[] file = json.readTree(again).get("file").asString().getBytes(StandardCharsets.UTF_8);
    assertThat(ofZones(file)).isEqualTo(ofZones(floor)).isNotEmpty();
  }

  private static Map<String, String> ofZones(byte[] file) throws Exception {
    FactBook book = Floors.advisor().knowledge().facts();
    Map<String, String> said = new TreeMap<>(Answers.of(book, "floor.yaml", file).said());
    said.keySet().removeIf(id -> !id.startsWith("zones"));
    return said;
  }

  private static String body(String answer) {
    return answer.substring(answer.indexOf("\r\n\r\n") + 4);
  }

  @Test
  void twenty_requests_of_which_only_half_comes_keep_nobody_waiting_and_are_dropped()
      throws Exception {
    java.util.List<Socket> halves = new java.util.ArrayList<>();
    try {
      for (int i = 0; i < 20; i++) {
        Socket half = new Socket("127.0.0.1", at.getPort());
        half.setSoTimeout(60_000);
        String head =
            "POST "
                + at.getPath()
                + "advice HTTP/1.1\r\nHost: "
                + host()
                + "\r\nOrigin: "
                + origin()
                + "\r\nContent-Type: application/json\r\nContent-Length: 1000\r\n";
        String sent = i % 2 == 0 ? head + "\r\n{\"answers\":" : head.substring(0, 40);
        half.getOutputStream().write(sent.getBytes(StandardCharsets.UTF_8));
        half.getOutputStream().flush();
        halves.add(half);
      }
      assertThat(get(at.getPath(), host(), "")).startsWith("HTTP/1.1 200");
      for (Socket half : halves) {
        int left;
        try {
          left = half.getInputStream().read();
        } catch (java.net.SocketException dropped) {
          left = -1;
        }
        assertThat(left).as("the server has hung up").isEqualTo(-1);
      }
    } finally {
      for (Socket half : halves) {
        half.close();
      }
    }
  }

  @Test
  void other_pages_other_hosts_and_wrong_words_are_refused() throws Exception {
    assertThat(get(at.getPath(), "evil.example:" + at.getPort(), "")).startsWith("HTTP/1.1 403");
    assertThat(get(at.getPath(), "localhost:" + at.getPort(), "")).startsWith("HTTP/1.1 403");
    assertThat(get(at.getPath(), host(), "Origin: http://evil.example\r\n"))
        .startsWith("HTTP/1.1 403");
    assertThat(get(at.getPath(), host(), "Sec-Fetch-Site: cross-site\r\n"))
        .startsWith("HTTP/1.1 403");
    assertThat(post("advice", "{}", "http://evil.example")).startsWith("HTTP/1.1 403");
    assertThat(post("advice", "{}", "null")).startsWith("HTTP/1.1 403");
    assertThat(send("POST", at.getPath() + "advice", host(), "Content-Length: 0\r\n", ""))
        .startsWith("HTTP/1.1 403");
    assertThat(get("/", host(), "")).startsWith("HTTP/1.1 404");
    assertThat(get("/" + "0".repeat(36) + "/", host(), "")).startsWith("HTTP/1.1 404");
  }

  @Test
  void paths_that_climb_and_methods_that_do_not_belong_find_nothing() throws Exception {
    for (String trick :
        new String[] {
          "../page.js", "%2e%2e/page.js", "page.html", "..%2f..%2fetc/passwd", "//", "page.js%00"
        }) {
      assertThat(get(at.getPath() + trick, host(), "")).as(trick).startsWith("HTTP/1.1 404");
    }
    assertThat(get(at.getPath() + "advice", host(), "")).startsWith("HTTP/1.1 405");
    assertThat(send("PUT", at.getPath(), host(), "Origin: " + origin() + "\r\n", ""))
        .startsWith("HTTP/1.1 405");
  }

  @Test
  void a_body_that_is_too_large_or_of_another_kind_is_refused() throws Exception {
    assertThat(post("advice", " ".repeat(1_300_000), origin())).startsWith("HTTP/1.1 413");
    String head = "Origin: " + origin() + "\r\nContent-Type: text/plain\r\nContent-Length: 2\r\n";
    assertThat(send("POST", at.getPath() + "advice", host(), head, "{}"))
        .startsWith("HTTP/1.1 415");
  }

  private static String host() {
    return "127.0.0.1:" + at.getPort();
  }

  private static String origin() {
    return "http://" + host();
  }

  private static String get(String path, String host, String headers) throws Exception {
    return send("GET", path, host, headers, "");
  }

  private static String post(String what, String body, String origin) throws Exception {
    String head =
        "Origin: "
            + origin
            + "\r\nContent-Type: application/json\r\nContent-Length: "
            + body.length()
            + "\r\n";
    return send("POST", at.getPath() + what, host(), head, body);
  }

  private static String send(String method, String path, String host, String headers, String body)
      throws Exception {
    try (Socket socket = new Socket("127.0.0.1", at.getPort())) {
      OutputStream out = socket.getOutputStream();
      String head =
          method
              + " "
              + path
              + " HTTP/1.1\r\nHost: "
              + host
              + "\r\n"
              + headers
              + "Connection: close\r\n\r\n";
      out.write((head + body).getBytes(StandardCharsets.ISO_8859_1));
      out.flush();
      InputStream in = socket.getInputStream();
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
