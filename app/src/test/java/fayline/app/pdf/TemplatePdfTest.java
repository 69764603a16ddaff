package fayline.app.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.app.drawing.template.SampleTemplate;
import fayline.app.drawing.template.Template;
import fayline.basis.units.UnitSystem;
import fayline.method.fitup.Spot;
import fayline.method.fitup.trim.cut.CutSide;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TemplatePdfTest {
    private static final Template TEMPLATE = SampleTemplate.of(CutSide.PART);
    private static final double PIXELS_PER_MM = 20;

    private static PDDocument print(Paper paper, TemplatePdf.Extent extent) throws Exception {
        return Loader.loadPDF(TemplatePdf.print(TEMPLATE, paper, extent));
    }

    /** Every straight stroke of one page, in mm from the lower left: x1, y1, x2, y2. */
    private static List<double[]> strokes(PDPage page) throws Exception {
        List<double[]> all = new ArrayList<>();
        List<Double> numbers = new ArrayList<>();
        double[] at = {0, 0};
        for (Object token : new PDFStreamParser(page).parse()) {
            if (token instanceof COSNumber n) {
                numbers.add(n.floatValue() / MmPen.POINTS_PER_MM);
            } else if (token instanceof Operator op) {
                if (op.getName().equals("l")) {
                    all.add(new double[] {at[0], at[1], numbers.get(0), numbers.get(1)});
                }
                if (op.getName().equals("l") || op.getName().equals("m")) {
                    at = new double[] {numbers.get(0), numbers.get(1)};
                }
                numbers.clear();
            }
        }
        return all;
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void should_draw_bars_of_100_mm_each_way_on_every_sheet_when_printed(Paper paper) throws Exception {
        try (PDDocument pdf = print(paper, TemplatePdf.Extent.WHOLE)) {
            assertThat(pdf.getNumberOfPages()).isGreaterThan(3);
            for (PDPage page : pdf.getPages()) {
                List<double[]> strokes = strokes(page);
                assertThat(strokes).anyMatch(s -> Math.abs(s[2] - s[0] - 100) < 0.001 && s[1] == s[3]);
                assertThat(strokes).anyMatch(s -> Math.abs(s[3] - s[1] - 100) < 0.001 && s[0] == s[2]);
                // 4 in = 101.6 mm by definition
                assertThat(strokes).anyMatch(s -> Math.abs(s[2] - s[0] - 101.6) < 0.001 && s[1] == s[3]);
                assertThat(strokes).anyMatch(s -> Math.abs(s[3] - s[1] - 101.6) < 0.001 && s[0] == s[2]);
            }
            assertThat(pdf.getDocumentCatalog().getViewerPreferences().getPrintScaling())
                    .isEqualTo(PDViewerPreferences.PRINT_SCALING.None.name());
        }
    }

    @Test
    void should_measure_100_mm_when_the_bar_is_seen_as_a_picture() throws Exception {
        try (PDDocument pdf = print(Paper.A4, TemplatePdf.Extent.CUTS)) {
            double[] bar = strokes(pdf.getPage(0)).stream()
                    .filter(s -> Math.abs(s[2] - s[0] - 100) < 0.001 && s[1] == s[3])
                    .findFirst()
                    .orElseThrow();
            BufferedImage image =
                    new PDFRenderer(pdf).renderImageWithDPI(0, (float) (25.4 * PIXELS_PER_MM), ImageType.GRAY);
            // a millimetre above the bar, where its end ticks stand
            int y = (int) Math.round(image.getHeight() - (bar[1] + 1) * PIXELS_PER_MM);
            List<Integer> begins = new ArrayList<>();
            boolean before = false;
            for (int x = (int) (bar[0] * PIXELS_PER_MM) - 40; x < (bar[2] + 2) * PIXELS_PER_MM; x++) {
                boolean dark = (image.getRGB(x, y) & 0xff) < 128;
                if (dark && !before) {
                    begins.add(x);
                }
                before = dark;
            }
            assertThat(begins).hasSize(11);
            assertThat((begins.get(10) - begins.get(0)) / PIXELS_PER_MM).isCloseTo(100.0, within(0.1));
        }
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void should_have_every_place_of_the_edge_on_a_sheet_when_the_whole_is_printed(Paper paper) {
        Tiling tiling = TemplatePdf.tiling(TEMPLATE, paper.widthMm(), paper.heightMm(), TemplatePdf.Extent.WHOLE);
        for (List<Spot> line : TEMPLATE.lines()) {
            for (int i = 1; i < line.size(); i++) {
                for (int k = 0; k <= 50; k++) {
                    Spot a = line.get(i - 1);
                    Spot b = line.get(i);
                    Spot p = new Spot(
                            a.xMm() + (b.xMm() - a.xMm()) * k / 50.0, a.yMm() + (b.yMm() - a.yMm()) * k / 50.0);
                    assertThat(tiling.tiles()).anyMatch(t -> tiling.holds(t, p));
                }
            }
        }
        assertThat(tiling.crosses())
                .isNotEmpty()
                .allSatisfy(c -> assertThat(tiling.tiles().stream()
                                .filter(t -> tiling.holds(t, c.at()))
                                .count())
                        .isGreaterThanOrEqualTo(2));
        for (Tiling.Tile t : tiling.tiles()) {
            assertThat(TEMPLATE.lines().stream().anyMatch(l -> touches(tiling, t, l)))
                    .isTrue();
        }
    }

    private static boolean touches(Tiling tiling, Tiling.Tile t, List<Spot> line) {
        for (int i = 1; i < line.size(); i++) {
            for (int k = 0; k <= 400; k++) {
                Spot a = line.get(i - 1);
                Spot b = line.get(i);
                if (tiling.holds(
                        t,
                        new Spot(
                                a.xMm() + (b.xMm() - a.xMm()) * k / 400.0,
                                a.yMm() + (b.yMm() - a.yMm()) * k / 400.0))) {
                    return true;
                }
            }
        }
        return false;
    }

    @Test
    void should_leave_the_empty_middle_out_when_the_part_is_larger_than_a_sheet() {
        List<Spot> ring =
                List.of(new Spot(0, 0), new Spot(900, 0), new Spot(900, 900), new Spot(0, 900), new Spot(0, 0));
        Tiling tiling = Tiling.of(List.of(new Spot(0, 0), new Spot(900, 900)), List.of(ring), 200, 200);
        // 912 mm by windows of 200 every 185 mm: 5 by 5 of which the inner 3 by 3 are empty
        assertThat(tiling.tiles()).hasSize(16);
        assertThat(tiling.tiles().get(5).name()).isEqualTo("B1");
        assertThat(tiling.tiles().get(6).name()).isEqualTo("B5");
    }

    @Test
    void should_draw_the_same_place_of_the_edge_in_its_place_on_the_sheet_when_printed() throws Exception {
        try (PDDocument pdf = print(Paper.A4, TemplatePdf.Extent.WHOLE)) {
            boolean upright = pdf.getPage(0).getMediaBox().getHeight()
                    > pdf.getPage(0).getMediaBox().getWidth();
            Tiling tiling =
                    TemplatePdf.tiling(TEMPLATE, upright ? 210 : 297, upright ? 297 : 210, TemplatePdf.Extent.WHOLE);
            assertThat(pdf.getNumberOfPages()).isEqualTo(tiling.tiles().size());
            for (int i = 0; i < pdf.getNumberOfPages(); i++) {
                Tiling.Tile t = tiling.tiles().get(i);
                Spot a = TEMPLATE.edge().get(0);
                double x = TemplateSheet.MARGIN_MM + a.xMm() - t.leftMm();
                double y = TemplateSheet.MARGIN_MM + TemplateSheet.FOOT_MM + a.yMm() - t.lowMm();
                assertThat(strokes(pdf.getPage(i)))
                        .anyMatch(s -> Math.abs(s[0] - x) < 1e-3 && Math.abs(s[1] - y) < 1e-3);
            }
        }
    }

    @Test
    void should_print_fewer_sheets_when_only_the_cuts_are_wanted() throws Exception {
        try (PDDocument cuts = print(Paper.A4, TemplatePdf.Extent.CUTS);
                PDDocument whole = print(Paper.A4, TemplatePdf.Extent.WHOLE)) {
            assertThat(cuts.getNumberOfPages()).isLessThan(whole.getNumberOfPages());
            String text = new PDFTextStripper().getText(cuts);
            assertThat(text)
                    .contains("Canopy pane <left> & frame")
                    .contains("Revision C, 9f2c44d1")
                    .contains("Tue 3 Mar 2026")
                    .contains("measure either before use")
                    .contains("mask and goggles")
                    .contains("Cut outside the broken line first")
                    .contains("T2: 1.8 mm, first 1.5")
                    .contains("Sheet A1, 1 of " + cuts.getNumberOfPages());
        }
    }

    @Test
    void should_be_the_same_file_when_printed_twice_and_survive_letters_the_font_lacks() throws Exception {
        Template odd = new Template(
                new Template.Heading("\u4e2d \ud83d\ude00 pane", "", "", ""),
                TEMPLATE.hand(),
                TEMPLATE.edge(),
                List.of(),
                List.of(),
                UnitSystem.METRIC);
        byte[] once = TemplatePdf.print(odd, Paper.LETTER, TemplatePdf.Extent.CUTS);
        assertThat(TemplatePdf.print(odd, Paper.LETTER, TemplatePdf.Extent.CUTS))
                .isEqualTo(once);
        try (PDDocument pdf = Loader.loadPDF(once)) {
            assertThat(new PDFTextStripper().getText(pdf))
                    .contains("? ? pane")
                    .contains("No cut")
                    .doesNotContain("Cut outside the broken line")
                    .contains("Overlay the crosses");
        }
    }
}
