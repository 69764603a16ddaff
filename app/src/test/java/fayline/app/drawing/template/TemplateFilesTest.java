package fayline.app.drawing.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.basis.geometry.Outline;
import fayline.basis.units.UnitSystem;
import fayline.method.fitup.Spot;
import fayline.method.fitup.outline.PartOutline;
import fayline.method.fitup.trim.cut.CutSide;
import fayline.store.file.outline.OutlineReader;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import fayline.store.file.yaml.YamlDoor;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class TemplateFilesTest {
    private static final Template TEMPLATE = SampleTemplate.of(CutSide.NEIGHBOUR);
    private static final PartOutline OUTLINE = SampleTemplate.outline();

    private static Outline read(String name, String content, String layer) {
        Problems problems = new Problems();
        Tree tree = YamlDoor.read("parts.yaml", "{file: " + name + ", layer: " + layer + "}", problems)
                .orElseThrow();
        Optional<Outline> outline =
                new OutlineReader(f -> Optional.of(content), new TreeSet<>(List.of(name)), problems).read(tree);
        return outline.orElseThrow(() -> new AssertionError(problems.sorted().toString()));
    }

    @Test
    void should_enclose_the_same_area_when_the_dxf_is_read_again() {
        Outline read = read("a.dxf", TemplateDxf.write(TEMPLATE), TemplateDxf.EDGE);
        assertThat(read.area().squareMillimetres()).isCloseTo(OUTLINE.areaMm2(), within(5.0));
        assertThat(read.perimeter().millimetres()).isCloseTo(OUTLINE.perimeterMm(), within(0.1));
    }

    @Test
    void should_enclose_the_same_area_when_the_edge_of_the_svg_is_read_again() {
        Outline read = read("a.svg", TemplateSvg.write(TEMPLATE), "edge");
        assertThat(read.area().squareMillimetres()).isCloseTo(OUTLINE.areaMm2(), within(5.0));
    }

    @Test
    void should_have_millimetres_for_units_of_the_view_box_when_written_as_svg() {
        String svg = TemplateSvg.write(TEMPLATE);
        Matcher m = Pattern.compile("width=\"([0-9.]+)mm\" height=\"([0-9.]+)mm\" viewBox=\"0 0 ([0-9.]+) ([0-9.]+)\"")
                .matcher(svg);
        assertThat(m.find()).isTrue();
        assertThat(m.group(3)).isEqualTo(m.group(1));
        assertThat(m.group(4)).isEqualTo(m.group(2));
        assertThat(svg).contains("Canopy pane &lt;left&gt; &amp; frame").doesNotContain("<left>");
    }

    @Test
    void should_scribe_inside_the_part_and_outside_for_the_neighbour_when_both_are_cut() {
        Scribe top = TEMPLATE.scribes().get(0);
        Scribe rear = TEMPLATE.scribes().get(1);
        double deepest = top.finish().stream()
                .mapToDouble(TemplateFilesTest::depth)
                .max()
                .orElseThrow();
        assertThat(deepest).isCloseTo(1.8, within(1e-3));
        assertThat(depth(rear.finish().get(0))).isCloseTo(-2, within(1e-6));
        assertThat(depth(rear.first().get(0))).isCloseTo(-1.7, within(1e-6));
        assertThat(depth(rear.finish().get(rear.finish().size() - 1))).isCloseTo(-1, within(1e-6));
    }

    /** How far inside the edge a place lies. */
    private static double depth(Spot p) {
        var edge = OUTLINE.nearest(p);
        return (edge.at().xMm() - p.xMm()) * edge.nx() + (edge.at().yMm() - p.yMm()) * edge.ny();
    }

    @Test
    void should_mark_every_station_once_when_some_are_cut() {
        assertThat(TEMPLATE.marks().stream().map(m -> m.words(UnitSystem.METRIC)))
                .containsExactly(
                        "T1: no cut",
                        "T2: 1.8 mm, first 1.5",
                        "front end: 1.2 mm, first 0.9",
                        "R1: 2.0 mm, first 1.7",
                        "R2: 1.0 mm, first 0.7",
                        "B1: no cut");
        assertThat(TemplateDxf.write(TEMPLATE))
                .contains("R1: 2.0 mm, first 1.7")
                .contains("AC1009");
    }

    @Test
    void should_keep_every_pair_of_lines_whole_when_names_hold_breaks_and_foreign_letters() {
        Template odd = new Template(
                new Template.Heading("Pan\u00e9\n  0\nEOF \u4e2d", "", "", ""),
                TEMPLATE.hand(),
                TEMPLATE.edge(),
                List.of(),
                List.of(),
                UnitSystem.METRIC);
        String dxf = TemplateDxf.write(odd);
        assertThat(dxf).contains("Pane   0 EOF ?");
        assertThat(read("a.dxf", dxf, TemplateDxf.EDGE).area().squareMillimetres())
                .isCloseTo(OUTLINE.areaMm2(), within(5.0));
    }
}
