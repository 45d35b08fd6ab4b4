package underfoot.cli;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import underfoot.knowledge.Workings;
import underfoot.report.RecordWriter;
import underfoot.working.Key;
import underfoot.working.Measure;
import underfoot.working.Refused;
import underfoot.working.Result;
import underfoot.working.Working;

/** {@code work-out NAME key=value ...}: one working on its own, with its steps and source. */
@Command(
    name = "work-out",
    mixinStandardHelpOptions = true,
    description = {
      "Any one working on its own: formula, numbers, result and source.",
      "Without a name it lists the workings; with a name alone it explains the keys."
    })
public final class WorkOut implements Callable<Integer> {
  private static final int WRONG_USAGE = 2;

  @Spec private CommandSpec spec;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "NAME",
      description = "The working, such as joist-span.")
  private String name;

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "key=value",
      description = "A key with its value and unit, such as 'span=3.2 m'.")
  private List<String> pairs = List.of();

  @Option(names = "--json", description = "Print JSON, numbers unrounded.")
  private boolean json;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    try {
      Workings workings = Workings.standard();
      if (name == null) {
        list(workings, out);
      } else {
        Working working = workings.named(name);
        if (pairs.isEmpty()) {
          explain(working, out);
        } else {
          show(working, working.read(given(working, pairs)), out);
        }
      }
      out.flush();
      return 0;
    } catch (Refused refused) {
      PrintWriter err = spec.commandLine().getErr();
      err.println("work-out: " + refused.getMessage());
      err.flush();
      return WRONG_USAGE;
    }
  }

  private static Map<String, String> given(Working working, List<String> pairs) {
    Map<String, String> given = new LinkedHashMap<>();
    for (String pair : pairs) {
      int equals = pair.indexOf('=');
      if (equals < 1) {
        throw new Refused(
            working.name()
                + ": '"
                + oneLine(pair)
                + "' is not key=value, such as '"
                + working.example().get(0)
                + "'");
      }
      String key = pair.substring(0, equals).strip();
      if (given.put(key, pair.substring(equals + 1)) != null) {
        String range =
            working.keys().stream()
                .filter(known -> known.name().equals(key))
                .map(known -> "; it is " + known.range())
                .findFirst()
                .orElse("");
        throw new Refused(oneLine(key) + ": is given twice" + range);
      }
    }
    return given;
  }

  private static String oneLine(String text) {
    String clean = text.replaceAll("\\p{Cntrl}", " ").strip();
    return clean.length() <= 60 ? clean : clean.substring(0, 60) + "...";
  }

  private void list(Workings workings, PrintWriter out) {
    if (json) {
      print(Map.of("workings", workings.all().stream().map(Described::of).toList()), out);
      return;
    }
    int width = workings.all().stream().mapToInt(w -> w.name().length()).max().orElse(0);
    for (Working working : workings.all()) {
      out.printf("%-" + width + "s  %s%n", working.name(), working.purpose());
    }
  }

  private void explain(Working working, PrintWriter out) {
    if (json) {
      print(Described.of(working), out);
      return;
    }
    out.println(working.name() + ": " + working.purpose());
    out.println();
    int width = working.keys().stream().mapToInt(key -> key.name().length()).max().orElse(0);
    for (Key key : working.keys()) {
      out.printf(
          "  %-" + width + "s  %s%s%n", key.name(), key.explanation(), standing(working, key));
      out.printf("  %-" + width + "s  %s%n", "", key.range());
    }
    ways(working).forEach(out::println);
    out.println();
    out.println("Example: work-out " + working.name() + " " + example(working));
    out.println("Source: " + working.source());
  }

  private static String standing(Working working, Key key) {
    boolean alternative =
        working.alternatives().stream().anyMatch(way -> way.needed().contains(key.name()));
    if (key.needed()) {
      return "";
    }
    return alternative ? " (one way of several)" : " (may be left out)";
  }

  private static List<String> ways(Working working) {
    if (working.alternatives().isEmpty()) {
      return List.of();
    }
    return List.of(
        "",
        "Give one way only: "
            + String.join(
                "; or ",
                working.alternatives().stream()
                    .map(
                        way ->
                            way.words()
                                + (way.also().isEmpty()
                                    ? ""
                                    : " (" + String.join(", ", way.also()) + " may be added)"))
                    .toList())
            + ".");
  }

  private static String example(Working working) {
    return String.join(
        " ",
        working.example().stream()
            .map(pair -> pair.contains(" ") || pair.contains(";") ? "'" + pair + "'" : pair)
            .toList());
  }

  private record Described(
      String working,
      String purpose,
      List<Key> keys,
      List<List<String>> ways,
      List<String> example,
      String source) {
    static Described of(Working one) {
      List<List<String>> ways =
          one.alternatives().stream().map(way -> List.copyOf(way.needed())).toList();
      return new Described(
          one.name(), one.purpose(), one.keys(), ways, one.example(), one.source());
    }
  }

  private void show(Working working, Result result, PrintWriter out) {
    if (json) {
      print(result, out);
      return;
    }
    out.println(working.name() + ": " + working.purpose());
    out.println();
    List<String> steps = result.steps();
    for (int i = 0; i + 2 < steps.size(); i += 3) {
      out.println("  " + steps.get(i));
      out.println("    " + steps.get(i + 1));
      out.println("    -> " + steps.get(i + 2));
    }
    out.println();
    int width = result.results().keySet().stream().mapToInt(String::length).max().orElse(0);
    for (Map.Entry<String, Measure> entry : result.results().entrySet()) {
      out.printf("%-" + width + "s = %s%n", entry.getKey(), entry.getValue());
    }
    out.println();
    out.println("Source: " + result.source());
    result.notes().forEach(note -> out.println("Note: " + note));
    List<String> ranges =
        working.keys().stream()
            .filter(key -> result.inputs().containsKey(key.name()))
            .map(key -> "  " + key.name() + ": " + key.range())
            .toList();
    out.println("Ranges:");
    ranges.forEach(out::println);
  }

  private static void print(Object value, PrintWriter out) {
    RecordWriter.write(
        value, false, Map.of(Key.class, "name:key explanation range needed:required"), out);
    out.println();
  }
}
