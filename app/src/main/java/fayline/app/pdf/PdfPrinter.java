package fayline.app.pdf;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** Turns well-formed XHTML into PDF with the bundled font; fetches nothing from anywhere. */
public final class PdfPrinter {
    private static final String FONTS = "/fayline/app/fonts/";

    private PdfPrinter() {}

    /**
     * Prints.
     *
     * @param xhtml the document
     * @return the PDF
     * @throws UncheckedIOException if the font cannot be read: the program is damaged
     */
    public static byte[] print(String xhtml) {
        XRLog.setLoggingEnabled(false);
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useFastMode();
        builder.useSVGDrawer(new BatikSVGDrawer());
        builder.useProtocolsStreamImplementation(PdfPrinter::font, "bundled");
        builder.withHtmlContent(xhtml, null);
        builder.withProducer("Fayline");
        font(builder, "Regular", 400, BaseRendererBuilder.FontStyle.NORMAL);
        font(builder, "Bold", 700, BaseRendererBuilder.FontStyle.NORMAL);
        font(builder, "Italic", 400, BaseRendererBuilder.FontStyle.ITALIC);
        ByteArrayOutputStream out = new ByteArrayOutputStream(65_536);
        builder.toStream(out);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.layout();
            PDDocument document = renderer.getPdfDocument();
            PDViewerPreferences preferences =
                    new PDViewerPreferences(document.getDocumentCatalog().getCOSObject());
            preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
            document.getDocumentCatalog().setViewerPreferences(preferences);
            renderer.createPDF();
        } catch (IOException e) {
            throw new UncheckedIOException("could not print", e);
        }
        return out.toByteArray();
    }

    private static void font(PdfRendererBuilder builder, String cut, int weight, BaseRendererBuilder.FontStyle style) {
        builder.useFont(() -> open(cut), "Atkinson Hyperlegible", weight, style, true);
    }

    static InputStream open(String cut) {
        InputStream in = PdfPrinter.class.getResourceAsStream(FONTS + "AtkinsonHyperlegible-" + cut + ".ttf");
        if (in == null) {
            throw new IllegalStateException("the font's cut " + cut + " is missing from the program");
        }
        return in;
    }

    private static FSStream font(String url) {
        String cut = url.substring(url.indexOf(':') + 1);
        return new FSStream() {
            @Override
            public InputStream getStream() {
                return open(cut);
            }

            @Override
            public Reader getReader() {
                return new InputStreamReader(open(cut), StandardCharsets.UTF_8);
            }
        };
    }
}
