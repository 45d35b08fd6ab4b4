package underfoot.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Map;
import java.util.function.DoubleFunction;
import underfoot.knowledge.Phrases;
import underfoot.plan.Advice;
import underfoot.report.MadeBy;
import underfoot.report.html.HtmlReport;
import underfoot.report.html.ListPage;
import underfoot.report.html.SitePage;
import underfoot.report.pdf.PdfReport;

/**
 * What the page hands over to be taken along: the sheet for the site and the list for the shop, a
 * page of paper each, and the whole advice as one file that needs nothing else.
 */
final class PagePapers {
  private PagePapers() {}

  /** One of them: its name, what kind of file it is, and its bytes in base 64. */
  static Map<String, Object> of(String what, Advice advice, Phrases phrases, MadeBy madeBy)
      throws UserError {
    return switch (what) {
      case "sheet" ->
          onOneSheet("sheet", at -> SitePage.of(advice, phrases, madeBy, at), advice.scenario());
      case "list" -> onOneSheet("list", at -> ListPage.of(advice, phrases, at), advice.scenario());
      default -> {
        String page = HtmlReport.of(advice, phrases, madeBy, HtmlReport.Medium.SCREEN);
        yield file("advice.html", "text/html", page.getBytes(StandardCharsets.UTF_8));
      }
    };
  }

  private static Map<String, Object> onOneSheet(
      String name, DoubleFunction<String> page, String title) throws UserError {
    try {
      return file(name + ".pdf", "application/pdf", PdfReport.onOneSheet(page, title));
    } catch (IOException e) {
      throw new UserError(Exit.INTERNAL, "The PDF could not be made. " + e.getMessage());
    }
  }

  private static Map<String, Object> file(String name, String kind, byte[] bytes) {
    return Map.of("name", name, "kind", kind, "bytes", Base64.getEncoder().encodeToString(bytes));
  }
}
