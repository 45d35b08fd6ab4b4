package underfoot.report.pdf;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.function.DoubleFunction;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.w3c.dom.Document;
import org.xml.sax.SAXException;

/** Renders a page made for paper as a PDF. Nothing is fetched: the page is all there is. */
public final class PdfReport {
  /** The typeface that comes with the library; it is put into the file, so that it looks alike. */
  private static final String TYPEFACE =
      "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  private static final double LARGEST = 9.5;
  private static final double SMALLEST = 6.5;
  private static final double STEP = 0.75;

  private static final String FAMILY = "Underfoot";

  private PdfReport() {}

  /**
   * Renders a page.
   *
   * @param page well-formed XHTML, made for paper
   * @param title the title of the file
   * @return the PDF
   * @throws IOException if it cannot be rendered
   */
  public static byte[] of(String page, String title) throws IOException {
    return rendered(page).pdf();
  }

  private record Rendered(byte[] pdf, int pages) {}

  private static Rendered rendered(String page) throws IOException {
    int pages;
    Logger quiet = Logger.getLogger("org.apache");
    Level before = quiet.getLevel();
    quiet.setLevel(Level.OFF);
    XRLog.setLoggingEnabled(false);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (BatikSVGDrawer drawings = new BatikSVGDrawer()) {
      PdfRendererBuilder builder = new PdfRendererBuilder();
      builder.useFastMode();
      builder.useSVGDrawer(drawings);
      builder.useUriResolver((base, uri) -> null);
      builder.useFont(PdfReport::typeface, FAMILY, 400, FontStyle.NORMAL, true);
      builder.useFont(PdfReport::typeface, FAMILY, 700, FontStyle.NORMAL, true);
      builder.withW3cDocument(parsed(page), null);
      builder.withProducer(FAMILY);
      builder.toStream(OutputStream.nullOutputStream());
      try (PdfBoxRenderer renderer = builder.buildPdfRenderer();
          PDDocument pdf = renderer.createPDFKeepOpen()) {
        pages = pdf.getNumberOfPages();
        // The same page is the same file, whenever it is made.
        pdf.getDocumentInformation().getCOSObject().removeItem(COSName.CREATION_DATE);
        pdf.getDocumentInformation().getCOSObject().removeItem(COSName.MOD_DATE);
        pdf.setDocumentId(0L);
        pdf.save(out);
      }
    } catch (ParserConfigurationException | SAXException e) {
      throw new IOException(e);
    } finally {
      quiet.setLevel(before);
    }
    return new Rendered(out.toByteArray(), pages);
  }

  /**
   * Renders a page in the largest writing in which it stays on one sheet, or in the smallest that
   * can be read.
   *
   * @param page makes the page in writing of so many points
   * @param title the title of the file
   * @return the PDF
   * @throws IOException if it cannot be rendered
   */
  public static byte[] onOneSheet(DoubleFunction<String> page, String title) throws IOException {
    Rendered made = rendered(page.apply(LARGEST));
    for (double points = LARGEST - STEP; made.pages() > 1 && points >= SMALLEST; points -= STEP) {
      made = rendered(page.apply(points));
    }
    return made.pdf();
  }

  private static InputStream typeface() {
    return PdfRendererBuilder.class.getResourceAsStream(TYPEFACE);
  }

  private static Document parsed(String page)
      throws ParserConfigurationException, SAXException, IOException {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
    factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
    factory.setNamespaceAware(true);
    return factory
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(page.getBytes(StandardCharsets.UTF_8)));
  }
}
