package underfoot.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import underfoot.knowledge.Phrases;
import underfoot.plan.Advice;
import underfoot.report.html.HtmlReport;
import underfoot.report.pdf.PdfReport;

/**
 * The pages that {@code advise} writes to files. A file is written whole or not at all: beside its
 * place first, then moved there.
 */
final class ReportFiles {
  private static final String STANDARD_OUTPUT = "-";

  private final String html;
  private final String pdf;
  private final boolean json;

  /**
   * @param html where the page goes; null for nowhere
   * @param pdf where the PDF goes; null for nowhere
   * @param json whether JSON is printed too
   * @throws Complaint if a place cannot be written to, before anything is worked out
   */
  ReportFiles(String html, String pdf, boolean json) throws UserError {
    this.html = html;
    this.pdf = pdf;
    this.json = json;
    if (STANDARD_OUTPUT.equals(html) && json) {
      throw UserError.usage("--html - and --json would both go to standard output; name a file");
    }
    if (STANDARD_OUTPUT.equals(pdf)) {
      throw UserError.usage("--pdf needs a file");
    }
    if (html != null && html.equals(pdf)) {
      throw UserError.usage("--html and --pdf cannot go to one file");
    }
    if (html != null && !html.equals(STANDARD_OUTPUT)) {
      place(html);
    }
    if (pdf != null) {
      place(pdf);
    }
  }

  private static Path place(String name) throws UserError {
    try {
      Path path = Path.of(name).toAbsolutePath();
      if (name.isBlank() || Files.isDirectory(path)) {
        throw UserError.usage(Main.cut(name) + " is a folder; name a file to write");
      }
      if (path.getParent() == null || !Files.isDirectory(path.getParent())) {
        throw UserError.usage("There is no folder to write " + Main.cut(name) + " in");
      }
      if (!Files.isWritable(path.getParent())) {
        throw UserError.usage(Main.cut(name) + " may not be written there");
      }
      return path;
    } catch (InvalidPathException e) {
      throw UserError.usage(Main.cut(name) + " is no name of a file");
    }
  }

  /** Whether any page is asked for. */
  boolean wanted() {
    return html != null || pdf != null;
  }

  /** Whether pages stand in the place of the text. */
  boolean instead() {
    return wanted() && !json;
  }

  /** Writes the pages and says where. */
  void write(Advice advice, Phrases phrases, String ruleBase, PrintWriter out) throws UserError {
    if (html != null) {
      String page =
          HtmlReport.of(advice, phrases, Version.of(), ruleBase, HtmlReport.Medium.SCREEN);
      if (html.equals(STANDARD_OUTPUT)) {
        out.print(page);
      } else {
        put(html, page.getBytes(StandardCharsets.UTF_8));
      }
    }
    if (pdf != null) {
      String page = HtmlReport.of(advice, phrases, Version.of(), ruleBase, HtmlReport.Medium.PAPER);
      try {
        put(pdf, PdfReport.of(page, advice.scenario()));
      } catch (IOException e) {
        throw new UserError(Exit.INTERNAL, "The PDF could not be made. " + e.getMessage());
      }
    }
    if (instead() && !STANDARD_OUTPUT.equals(html)) {
      out.println(phrases.say("verdict-" + advice.verdict().word()));
      for (String name : new String[] {html, pdf}) {
        if (name != null) {
          out.println("Written: " + name);
        }
      }
    }
  }

  private static void put(String name, byte[] content) throws UserError {
    try {
      AtomicFile.put(place(name), content, true);
    } catch (IOException e) {
      throw new UserError(Exit.INTERNAL, Main.cut(name) + " could not be written in full");
    }
  }
}
