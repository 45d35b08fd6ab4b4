package underfoot.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import underfoot.knowledge.Phrases;
import underfoot.plan.Advice;
import underfoot.report.MadeBy;
import underfoot.report.ShoppingText;
import underfoot.report.html.ListPage;
import underfoot.report.html.SitePage;
import underfoot.report.pdf.PdfReport;

/** The pages of one sheet each that {@code advise} writes: the sheet for the site and the list. */
final class OnePages {
  private static final String HTML = ".html";
  private static final String PDF = ".pdf";
  private static final String CSV = ".csv";
  private static final double ON_SCREEN = 9.5;

  private final CommandContext context;
  private final OutputFile sheet;
  private final OutputFile list;

  /**
   * @param sheet where the sheet for the site goes; null if it is not wanted
   * @param list where the list goes; null if it is not wanted
   * @param replace whether files that are there may be replaced
   * @throws UserError if one cannot be written there, before anything is worked out
   */
  OnePages(CommandContext context, String sheet, String list, boolean replace) throws UserError {
    this.context = context;
    this.sheet = place("--sheet", sheet, replace, List.of(HTML, PDF));
    this.list = place("--list", list, replace, List.of(CSV, HTML, PDF));
    if (this.sheet != null && this.list != null && this.sheet.target().equals(this.list.target())) {
      throw UserError.usage("--sheet and --list cannot go to one file");
    }
  }

  private OutputFile place(String option, String name, boolean replace, List<String> endings)
      throws UserError {
    if (name == null) {
      return null;
    }
    String lower = name.toLowerCase(Locale.ROOT);
    if (endings.stream().noneMatch(lower::endsWith)) {
      throw UserError.usage(
          option + " tells by its ending what to write; name a file that ends in "
              + String.join(" or ", endings));
    }
    return context.output(name, replace);
  }

  /** Writes them, and tells which were written. */
  List<OutputFile> write(Advice advice, SafeOutput out) throws UserError {
    List<OutputFile> written = new ArrayList<>();
    Phrases phrases = context.phrases();
    MadeBy madeBy = context.madeBy();
    if (sheet != null) {
      page(sheet, advice, at -> SitePage.of(advice, phrases, madeBy, at), out);
      written.add(sheet);
    }
    if (list != null) {
      if (list.name().toLowerCase(Locale.ROOT).endsWith(CSV)) {
        list.write(ShoppingText.csv(advice.consequences().shopping(), phrases), out);
      } else {
        page(list, advice, at -> ListPage.of(advice, phrases, at), out);
      }
      written.add(list);
    }
    return written;
  }

  private static void page(
      OutputFile file, Advice advice, DoubleFunction<String> page, SafeOutput out)
      throws UserError {
    if (file.name().toLowerCase(Locale.ROOT).endsWith(HTML)) {
      file.write(page.apply(ON_SCREEN), out);
      return;
    }
    try {
      file.write(PdfReport.onOneSheet(page, advice.scenario()));
    } catch (IOException e) {
      throw new UserError(Exit.INTERNAL, "The PDF could not be made. " + e.getMessage());
    }
  }
}
