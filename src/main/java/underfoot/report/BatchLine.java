package underfoot.report;

import java.io.Writer;
import java.util.List;
import java.util.Optional;
import tools.jackson.core.JsonGenerator;
import underfoot.plan.Advice;

/** One scenario of many, as one line of JSON without its line feed. */
public final class BatchLine {
  /** The format of a line about a scenario that could not be used. */
  public static final String FAILURE = "underfoot.failure/1";

  private BatchLine() {}

  /**
   * Which scenario a line answers.
   *
   * @param file the name of the file as it was given, or of the line of standard input
   * @param sha256 the digest of its content, in hexadecimal; empty if it could not be read
   * @param supersedes the digest of the content that an earlier line of the same file answered and
   *     that this line is in the place of; empty if there is none
   */
  public record Origin(String file, String sha256, String supersedes) {
    void write(JsonGenerator json) {
      json.writeStringProperty("file", file);
      json.writeStringProperty("sha256", sha256);
      if (!supersedes.isEmpty()) {
        json.writeStringProperty("supersedes", supersedes);
      }
    }
  }

  /**
   * The line for advice: what {@code advise --json} prints, and the file.
   *
   * @param origin which scenario it is about
   * @param advice the advice
   * @param version the version of the program
   * @param ruleBase what tells this rule base from others
   * @param out where it is written; left open
   */
  public static void advice(
      Origin origin, Advice advice, String version, String ruleBase, Writer out) {
    try (JsonGenerator json = JsonReport.onOneLine(out)) {
      new JsonReport(json).write(advice, Optional.of(origin), version, ruleBase);
    }
  }

  /**
   * The line for a scenario that could not be used.
   *
   * @param origin which scenario it is about
   * @param exit the exit code that {@code advise} would end with
   * @param faults what is wrong with it, with places and how to put it right
   * @param out where it is written; left open
   */
  public static void failure(Origin origin, int exit, List<String> faults, Writer out) {
    try (JsonGenerator json = JsonReport.onOneLine(out)) {
      json.writeStartObject();
      json.writeStringProperty("format", FAILURE);
      origin.write(json);
      json.writeNumberProperty("exit", exit);
      new JsonReport(json).texts("faults", faults);
      json.writeEndObject();
    }
  }
}
