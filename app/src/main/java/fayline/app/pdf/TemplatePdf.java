package fayline.app.pdf;

import fayline.app.drawing.template.Scribe;
import fayline.app.drawing.template.Template;
import fayline.method.fitup.Spot;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * Prints a template in true size over as many sheets as it takes, upright or across, whichever takes fewer. Every sheet bears
 * a bar of 100.0 mm each way, because a printer may still scale.
 */
public final class TemplatePdf {
    private TemplatePdf() {}

    /** Which sheets are printed. */
    public enum Extent {
        /** Those that carry a line to cut to; all of them where nothing is cut. */
        CUTS,
        /** Those that carry any of the edge. */
        WHOLE
    }

    /**
     * Prints.
     *
     * @param template the template
     * @param paper the sheets
     * @param extent which of them
     * @return the PDF
     * @throws UncheckedIOException if the font cannot be read: the program is damaged
     */
    public static byte[] print(Template template, Paper paper, Extent extent) {
        Tiling upright = tiling(template, paper.widthMm(), paper.heightMm(), extent);
        Tiling across = tiling(template, paper.heightMm(), paper.widthMm(), extent);
        return across.tiles().size() < upright.tiles().size()
                ? print(template, across, paper.heightMm(), paper.widthMm())
                : print(template, upright, paper.widthMm(), paper.heightMm());
    }

    static Tiling tiling(Template template, double paperWidthMm, double paperHeightMm, Extent extent) {
        boolean cutsOnly = extent == Extent.CUTS && !template.scribes().isEmpty();
        List<List<Spot>> carried = new ArrayList<>();
        if (cutsOnly) {
            template.scribes().stream().map(Scribe::finish).forEach(carried::add);
        } else {
            carried.addAll(template.lines());
        }
        List<Spot> bounds = cutsOnly ? bounds(carried) : template.bounds();
        return Tiling.of(
                bounds,
                carried,
                paperWidthMm - 2 * TemplateSheet.MARGIN_MM - TemplateSheet.STRIP_MM,
                paperHeightMm - 2 * TemplateSheet.MARGIN_MM - TemplateSheet.FOOT_MM);
    }

    private static List<Spot> bounds(List<List<Spot>> lines) {
        List<Spot> all = lines.stream().flatMap(List::stream).toList();
        return List.of(
                new Spot(
                        all.stream().mapToDouble(Spot::xMm).min().orElseThrow(),
                        all.stream().mapToDouble(Spot::yMm).min().orElseThrow()),
                new Spot(
                        all.stream().mapToDouble(Spot::xMm).max().orElseThrow(),
                        all.stream().mapToDouble(Spot::yMm).max().orElseThrow()));
    }

    private static byte[] print(Template template, Tiling tiling, double widthMm, double heightMm) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(65_536);
        try (PDDocument document = new PDDocument()) {
            describe(document, template);
            PDFont plain = font(document, "Regular");
            PDFont bold = font(document, "Bold");
            for (Tiling.Tile tile : tiling.tiles()) {
                PDPage page = new PDPage(new PDRectangle(
                        (float) (widthMm * MmPen.POINTS_PER_MM), (float) (heightMm * MmPen.POINTS_PER_MM)));
                document.addPage(page);
                try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                    new TemplateSheet(template, tiling, tile, new MmPen(content), plain, bold).draw();
                }
            }
            document.save(out);
        } catch (IOException e) {
            throw new UncheckedIOException("could not print the template", e);
        }
        return out.toByteArray();
    }

    private static void describe(PDDocument document, Template template) {
        PDDocumentInformation about = new PDDocumentInformation();
        about.setTitle("Template: " + template.heading().part());
        about.setProducer("Fayline");
        document.setDocumentInformation(about);
        // the same template gives the same file
        document.setDocumentId(
                31L * template.heading().hashCode() + template.lines().hashCode());
        PDViewerPreferences preferences =
                new PDViewerPreferences(document.getDocumentCatalog().getCOSObject());
        preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
        document.getDocumentCatalog().setViewerPreferences(preferences);
    }

    private static PDFont font(PDDocument document, String cut) throws IOException {
        try (InputStream in = PdfPrinter.open(cut)) {
            return PDType0Font.load(document, in, true);
        }
    }
}
