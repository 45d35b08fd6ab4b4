package underfoot.report;

import java.io.Writer;
import java.util.List;
import tools.jackson.core.JsonGenerator;
import underfoot.plan.Advice;

/** One scenario of many, as one line of JSON without its line feed. */
public final class BatchLine {
  /** The format of a line about a scenario that could not be used. */
  public static final String FAILURE = "underfoot.failure/1";

  private BatchLine() {}

  /**
   * The line for advice: what {@code advise --json} prints, and the file.
   *
   * @param file the name of the file, or of the line of standard input
   * @param advice the advice
   * @param version the version of the program
   * @param ruleBase what tells this rule base from others
   * @param out where it is written; left open
   */
  public static void advice(
      String file, Advice advice, String version, String ruleBase, Writer out) {
    try (JsonGenerator json = JsonReport.onOneLine(out)) {
      new JsonReport(json).write(advice, file, version, ruleBase);
    }
  }

  /**
   * The line for a scenario that could not be used.
   *
   * @param file the name of the file, or of the line of standard input
   * @param exit the exit code that {@code advise} would end with
   * @param faults what is wrong with it, with places and how to put it right
   * @param out where it is written; left open
   */
  public static void failure(String file, int exit, List<String> faults, Writer out) {
    try (JsonGenerator json = JsonReport.onOneLine(out)) {
      json.writeStartObject();
      json.writeStringProperty("format", FAILURE);
      json.writeStringProperty("file", file);
      json.writeNumberProperty("exit", exit);
      new JsonReport(json).texts("faults", faults);
      json.writeEndObject();
    }
  }
}
