package underfoot.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.abort;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is read, what is written, and what reaches a terminal. */
class FilesTest {
  private static final Path SLAB = Path.of("src/test/resources/floors/slab.yaml");
  private static final String PRICES = "currency: GBP\ntiles: {pack: 1 m2, price: 50 GBP}\n";

  @TempDir private Path folder;
  private Path floor;

  @BeforeEach
  void put() throws IOException {
    floor = folder.resolve("floor.yaml");
    Files.copy(SLAB, floor);
  }

  private static Console.Ran run(Object... words) {
    return Console.run(List.of(words).stream().map(Object::toString).toArray(String[]::new));
  }

  private Path pipe(String name) throws Exception {
    Path pipe = folder.resolve(name);
    try {
      assumeTrue(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0);
    } catch (IOException e) {
      abort("there are no pipes with names here");
    }
    return pipe;
  }

  @Test
  void what_is_no_regular_file_is_neither_read_nor_written() throws Exception {
    Path pipe = pipe("pipe");
    Console.Ran read = run("advise", pipe);
    assertThat(read.exit()).isEqualTo(2);
    assertThat(read.err()).contains("is no regular file", "read as -");
    for (Path place : List.of(pipe, Path.of("/dev/null"))) {
      Console.Ran written = run("why", floor, "--html", place, "--replace");
      assertThat(written.exit()).isEqualTo(2);
      assertThat(written.err()).contains("is no regular file");
      assertThat(Files.isRegularFile(place)).isFalse();
      assertThat(run("batch", floor, "--out", place, "--replace").exit()).isEqualTo(2);
    }
  }

  @Test
  void a_pipe_in_the_place_of_a_rule_file_is_told_and_not_waited_for() throws Exception {
    Path rules = Files.createDirectory(folder.resolve("rules"));
    pipe("rules/kinds.yaml");
    Console.Ran ran = run("schema", "--proposal", "--rules", rules);
    assertThat(ran.exit()).isNotZero();
  }

  @ParameterizedTest
  @ValueSource(strings = {"../prices.yaml", "%s/prices.yaml", "link.yaml", "sub/../prices.yaml"})
  void a_scenario_names_no_prices_but_beside_it_or_below(String named) throws Exception {
    Path below = Files.createDirectories(folder.resolve("a/sub")).getParent();
    Files.writeString(folder.resolve("prices.yaml"), PRICES);
    Files.writeString(below.resolve("prices.yaml"), PRICES);
    Files.createSymbolicLink(below.resolve("link.yaml"), folder.resolve("prices.yaml"));
    Path own = priced(below, named.formatted(folder));
    Console.Ran ran = run("advise", own);
    assertThat(ran.exit()).isEqualTo(3);
    assertThat(ran.err()).contains("beside the scenario or below", "--prices FILE");
    assertThat(run("advise", own, "--prices", folder.resolve("prices.yaml")).exit()).isZero();
  }

  @Test
  void prices_below_a_scenario_are_used_and_others_where_the_command_line_says_so()
      throws Exception {
    Files.createDirectory(folder.resolve("below"));
    Files.writeString(folder.resolve("below/prices.yaml"), PRICES);
    Path own = priced(folder, "below/prices.yaml");
    Console.Ran named = run("advise", own, "--json");
    assertThat(named.err()).isEmpty();
    Path dotted = folder.resolve(".").resolve(own.getFileName());
    assertThat(run("advise", dotted, "--json").out()).as("named with a dot").isEqualTo(named.out());
    Path dearer = folder.resolve("dearer.yaml");
    Files.writeString(dearer, PRICES.replace("50", "90"));
    Console.Ran other = run("advise", own, "--json", "--prices", dearer);
    assertThat(other.out()).isNotEqualTo(named.out());
    assertThat(run("advise", own, "--prices", "no-such-file").exit()).isEqualTo(2);
  }

  @Test
  void of_a_file_that_is_no_price_book_nothing_is_told() throws Exception {
    Files.writeString(folder.resolve("secret.yaml"), "password: {hunter: 2}\nkey: [a, b\n");
    Console.Ran ran = run("advise", priced(folder, "secret.yaml"));
    assertThat(ran.exit()).isEqualTo(3);
    assertThat(ran.err()).contains("no price book").doesNotContain("password", "hunter", "key");
  }

  private static Path priced(Path folder, String prices) throws IOException {
    String text = Files.readString(SLAB).replaceAll("(?m)^budget:.*\\R", "");
    Path file = folder.resolve("priced.yaml");
    return Files.writeString(
        file, text + "budget: {limit: 9000 GBP, prices: \"" + prices + "\"}\n");
  }

  @Test
  void a_file_that_is_there_is_replaced_only_when_told() throws Exception {
    Path there = folder.resolve("there.html");
    List<List<Object>> commands =
        List.of(
            List.of("why", floor, "--html", there),
            List.of("rules", "--html", there),
            List.of("lesson", floor, "--html", there),
            List.of("advise", floor, "--html", there),
            List.of("advise", floor, "--pdf", there),
            List.of("batch", "--without-trials", floor, "--out", there));
    for (List<Object> command : commands) {
      Files.writeString(there, "mine");
      Console.Ran refused = run(command.toArray());
      assertThat(refused.exit()).as("%s", command).isEqualTo(2);
      assertThat(refused.err()).contains("is there already; add --replace");
      assertThat(there).hasContent("mine");
      Object[] told =
          java.util.stream.Stream.concat(command.stream(), "--replace".lines()).toArray();
      assertThat(run(told).exit()).as("%s", command).isZero();
      assertThat(Files.readString(there, StandardCharsets.ISO_8859_1)).doesNotContain("mine");
    }
  }

  @Test
  void what_is_read_is_never_written_by_whatever_name() throws Exception {
    String before = Files.readString(floor);
    Path linked = Files.createLink(folder.resolve("hard.yaml"), floor);
    Path soft = Files.createSymbolicLink(folder.resolve("soft.yaml"), floor);
    for (Path name : List.of(floor, linked, soft, folder.resolve("./floor.yaml"))) {
      for (List<Object> command :
          List.<List<Object>>of(
              List.of("advise", floor, "--html", name),
              List.of("advise", floor, "--pdf", name),
              List.of("why", floor, "--html", name),
              List.of("ask", "--from", floor, "--to", name),
              List.of("batch", floor, "--out", name),
              List.of("batch", folder, "--out", name))) {
        Object[] told =
            java.util.stream.Stream.concat(command.stream(), "--replace".lines()).toArray();
        Console.Ran ran = run(told);
        assertThat(ran.exit()).as("%s", command).isEqualTo(2);
        assertThat(ran.err()).contains("is what is read");
      }
    }
    assertThat(floor).hasContent(before.strip());
    Path prices = Files.writeString(folder.resolve("prices.yaml"), PRICES);
    Path own = priced(folder, "prices.yaml");
    assertThat(run("why", own, "--html", prices, "--replace").exit()).isEqualTo(2);
    assertThat(prices).hasContent(PRICES.strip());
  }

  @Test
  void where_a_link_to_a_pipe_has_no_name_nothing_is_written() throws Exception {
    Path pipe = pipe("far");
    Process held =
        new ProcessBuilder("sh", "-c", "exec 3<> \"$0\"; rm \"$0\"; echo up; sleep 60", pipe + "")
            .start();
    try {
      assumeTrue(held.getInputStream().read() == 'u');
      Path nameless = Path.of("/proc/" + held.pid() + "/fd/3");
      assumeTrue(Files.exists(nameless));
      Console.Ran ran = run("why", floor, "--html", nameless, "--replace");
      assertThat(ran.exit()).isEqualTo(2);
      assertThat(ran.err()).contains("is no regular file");
    } finally {
      held.destroy();
    }
  }

  @Test
  void of_a_folder_nothing_is_read_that_does_not_lie_in_it() throws Exception {
    Path secret = Files.writeString(folder.resolve("secret.yaml"), "hunter: [2\n");
    Path given = Files.createDirectory(folder.resolve("given"));
    Files.createSymbolicLink(given.resolve("far.yaml"), secret);
    Files.copy(floor, given.resolve("here.yaml"));
    Files.createSymbolicLink(given.resolve("near.yaml"), Path.of("here.yaml"));
    Console.Ran ran = run("batch", "--without-trials", given);
    assertThat(ran.out().lines()).hasSize(3);
    assertThat(ran.out().lines().findFirst().orElseThrow())
        .contains("leads out of its folder; name the file itself")
        .doesNotContain("hunter");
    assertThat(ran.out().lines().skip(1)).allMatch(line -> line.contains("\"verdict\""));
    Path rules = Files.createDirectories(folder.resolve("rules/facts")).getParent();
    Files.createSymbolicLink(rules.resolve("facts/limits.yaml"), secret);
    Console.Ran told = run("schema", "--rules", rules);
    assertThat(told.exit()).isNotZero();
    assertThat(told.err())
        .contains("facts/limits.yaml leads out of the folder of the rules")
        .doesNotContain("hunter", "Exception");
  }

  @Test
  void onto_a_link_its_target_is_written_and_the_link_stays() throws Exception {
    Path real = folder.resolve("real.html");
    Path link = Files.createSymbolicLink(folder.resolve("link.html"), Path.of("real.html"));
    assertThat(run("why", floor, "--html", link).exit()).isZero();
    assertThat(Files.isSymbolicLink(link)).isTrue();
    assertThat(Files.readString(real)).endsWith("</html>\n");
    assertThat(run("why", floor, "--html", link).exit()).isEqualTo(2);
    assertThat(run("why", floor, "--html", link, "--replace").exit()).isZero();
    assertThat(Files.isSymbolicLink(link)).isTrue();
    try (var left = Files.list(folder)) {
      assertThat(left).hasSize(3);
    }
  }

  @Test
  void nothing_that_steers_a_terminal_reaches_one() throws Exception {
    String trick = "\\e[2J\\x9b31m\\u202Eexe\\u2066\\x07";
    Path own = folder.resolve("trick.yaml");
    Files.writeString(
        own,
        Files.readString(SLAB)
            .replaceFirst("scenario: .*", "scenario: \"A " + trick.replace("\\", "\\\\") + '"'));
    Map<String, String> terminal = Map.of("TERM", "xterm");
    String evil = "\u001b]0;x\u0007\u202e\u009b2J";
    for (String[] line :
        new String[][] {
          {"advise", own.toString()},
          {"advise", own.toString(), "--html", "-"},
          {"advise", own.toString(), "--json"},
          {"compare", own.toString(), SLAB.toString()},
          {"why-not", own.toString(), evil},
          {"advise", evil},
          {"work-out", evil},
          {evil},
          {"--help"},
          {"why", own.toString(), evil}
        }) {
      Console.Ran ran = Console.run(new byte[0], terminal, true, line);
      String shown = (ran.out() + ran.err()).replaceAll("\u001b\\[[0-9;]*m", "");
      assertThat(shown)
          .as(String.join(" ", line))
          .doesNotContainPattern("[\\x00-\\x08\\x0b-\\x1f]");
      assertThat(shown).doesNotContainPattern("[\\x7f-\\x9f\u202a-\u202e\u2066-\u2069]");
    }
    assertThat(run("why-not", floor, evil).err()).contains("\\u202e\\u009b2J");
  }

  @Test
  void a_port_that_is_none_says_what_to_write() {
    Console.Ran ran = run("ask", "--page", "--port", "99999");
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.err()).contains("from 1 to 65535", "leave it out");
  }

  @Test
  void pages_carry_a_policy_by_which_nothing_is_fetched_or_run() {
    for (Console.Ran page :
        List.of(
            run("advise", floor, "--html", "-"),
            run("why", floor, "--html", "-"),
            run("lesson", floor, "--html", "-"))) {
      assertThat(page.out())
          .contains("http-equiv=\"Content-Security-Policy\" content=\"default-src ")
          .containsPattern("default-src (?:'|&#39;)none");
    }
  }

  @Test
  void the_same_floor_gives_the_same_pdf_whenever_it_is_made() throws Exception {
    Path one = folder.resolve("one.pdf");
    Path two = folder.resolve("two.pdf");
    assertThat(run("advise", floor, "--pdf", one).exit()).isZero();
    Thread.sleep(1100); // dates in a PDF are told by the second
    assertThat(run("advise", floor, "--pdf", two).exit()).isZero();
    assertThat(Files.mismatch(one, two)).isEqualTo(-1);
  }

  @Test
  void a_launcher_called_by_a_link_finds_the_program() throws Exception {
    Path home = Files.createDirectory(folder.resolve("home"));
    Path launcher = home.resolve("underfoot");
    Files.copy(Path.of("src/main/launcher/underfoot"), launcher);
    Path java = Files.createDirectories(folder.resolve("java/bin")).resolve("java");
    Files.writeString(java, "#!/bin/sh\necho \"$@\"\n");
    assumeTrue(launcher.toFile().setExecutable(true) && java.toFile().setExecutable(true));
    Path near = Files.createSymbolicLink(folder.resolve("near"), Path.of("home/underfoot"));
    Path far = Files.createSymbolicLink(folder.resolve("far"), near);
    for (Path called : List.of(launcher, near, far)) {
      ProcessBuilder process = new ProcessBuilder(called.toString(), "rules");
      process.environment().put("JAVA_HOME", folder.resolve("java").toString());
      String said = new String(process.start().getInputStream().readAllBytes());
      assertThat(said).as("%s", called).contains("-jar " + home.toRealPath() + "/underfoot.jar");
    }
  }

  @Test
  void of_several_files_none_is_written_where_one_cannot_be() throws Exception {
    Path first = folder.resolve("first.html");
    Path second = folder.resolve("gone/second.html");
    Files.createDirectory(second.getParent());
    Inputs nothing = new Inputs(InputStream.nullInputStream());
    Map<OutputFile, byte[]> both = new LinkedHashMap<>();
    both.put(new OutputFile(first.toString(), false, nothing), new byte[1]);
    both.put(new OutputFile(second.toString(), false, nothing), new byte[1]);
    Files.delete(second.getParent());
    assertThatThrownBy(() -> OutputFile.write(both)).isInstanceOf(UserError.class);
    assertThat(first).doesNotExist();
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left.filter(one -> one.toString().endsWith(".part"))).isEmpty();
    }
    Files.createDirectory(second.getParent());
    OutputFile.write(both);
    assertThat(first).exists();
    assertThat(second).exists();
  }
}
