package fayline.app.pdf;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.extend.FSTextBreaker;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.BreakIterator;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** Turns well-formed XHTML into PDF with the bundled font; fetches nothing from anywhere. */
public final class PdfPrinter {
    private static final String FONTS = "/fayline/app/fonts/";
    private static final String PICTURE = "picture";

    private PdfPrinter() {}

    /**
     * Prints.
     *
     * @param xhtml the document
     * @return the PDF
     * @throws UncheckedIOException if the font cannot be read: the program is damaged
     */
    public static byte[] print(String xhtml) {
        return print(xhtml, builder -> {});
    }

    /**
     * Prints for keeping: PDF/A-2a (ISO 19005-2), tagged, with the fonts and the colours' profile in the file, so that it is read
     * alike in decades.
     *
     * @param xhtml the document; its root names the language, its head a title and a description
     * @param pictures the pictures that it names as {@code picture:NAME}
     * @return the PDF
     * @throws UncheckedIOException as above
     */
    public static byte[] archive(String xhtml, Function<String, Optional<byte[]>> pictures) {
        return print(xhtml, builder -> {
            builder.usePdfAConformance(PdfRendererBuilder.PdfAConformance.PDFA_2_A);
            builder.usePdfUaAccessibility(true);
            builder.useColorProfile(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
            builder.useProtocolsStreamImplementation(url -> picture(url, pictures), PICTURE);
            builder.useUnicodeLineBreaker(new LineEnds());
        });
    }

    /** Where a line may end: the usual places, but not within a time or the number of a lot. */
    private static final class LineEnds implements FSTextBreaker {
        private final BreakIterator ends = BreakIterator.getLineInstance(Locale.ENGLISH);
        private String text = "";

        @Override
        public int next() {
            int end = ends.next();
            while (end > 0 && end < text.length() && isWithin(end)) {
                end = ends.next();
            }
            return end;
        }

        private boolean isWithin(int end) {
            char before = text.charAt(end - 1);
            return (before == ':' || before == '-') && Character.isDigit(text.charAt(end));
        }

        @Override
        public void setText(String newText) {
            text = newText;
            ends.setText(newText);
        }
    }

    private static byte[] print(String xhtml, Consumer<PdfRendererBuilder> further) {
        XRLog.setLoggingEnabled(false);
        PdfRendererBuilder builder = new PdfRendererBuilder();
        further.accept(builder);
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
        return stream(() -> open(named(url)));
    }

    private static FSStream picture(String url, Function<String, Optional<byte[]>> pictures) {
        byte[] bytes = pictures.apply(named(url))
                .orElseThrow(() -> new IllegalStateException("no picture of the name " + named(url)));
        return stream(() -> new ByteArrayInputStream(bytes));
    }

    private static String named(String url) {
        return url.substring(url.indexOf(':') + 1);
    }

    private static FSStream stream(Supplier<InputStream> opened) {
        return new FSStream() {
            @Override
            public InputStream getStream() {
                return opened.get();
            }

            @Override
            public Reader getReader() {
                return new InputStreamReader(opened.get(), StandardCharsets.UTF_8);
            }
        };
    }
}
