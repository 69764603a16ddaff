package fayline.store.file.kind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.basis.finding.InputProblem;
import fayline.flow.project.fit.frame.FitFrame;
import fayline.flow.project.fit.frame.FrameBeams;
import fayline.flow.project.fit.frame.FrameFitting.Body;
import fayline.flow.project.fit.frame.FrameSection;
import fayline.flow.project.fit.frame.FrameWay;
import fayline.method.fitup.frame.BeamSection;
import fayline.method.fitup.frame.spring.Clamp;
import fayline.store.file.DefinitionFolder;
import fayline.store.file.DefinitionReader;
import fayline.store.file.Teasel;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The widths and beams of a frame, read from a file and refused there. */
class FitBeamsTest {
    private static final String FRAME = """
                widths:
                  - {id: W1, where: across, wanted: 12 in, tolerance: 1/16 in, deviation: 0.3 mm, bond-takes: -1 mm, between: [P, Q]}
                frame:
                  origin: a test
                  creeps: yes
                  read-in: dry
                  places:
                    - {id: P, at: "0 0", run: 80 mm}
                    - {id: Q, at: "10 0 in"}
                    - {id: R, station: A, out: 1 in}
                  sections:
                    - {id: rail, stiffness: {stretch: 2.4 kN, in-plane: 95 N*m2, out: 60 Nm2, twist: 20 N*m2}, origin: hung a weight on it}
                    - {id: tube, tube: {outside: 20 mm, wall: 2 mm, modulus: 10 Msi, shear: 27 GPa}, origin: a table, assumed: yes}
                    - {id: bar, solid: {across: 20 mm, out: 3 mm, modulus: 3.2 GPa, shear: 1.1 GPa}, origin: a table}
                  part:
                    - {through: [P, Q], section: rail}
                    - {through: [Q, R], section: bar, facing: up}
                  carrier:
                    - {through: [P, Q], section: tube}
                  rests:
                    - {at: P, ways: [along, up, out, turn-along, turn-up, turn-out]}
                  held:
                    - {at: P, ways: [along, up, out]}
                  clamps:
                    - {id: K1, at: Q, way: up, off: -2 mm, sure: 0.5 mm, closes-to: 0.2 mm, only: plus}
                    - {id: K2, at: R, way: along, station: A}
                  adhesive: {thickness: 1 mm, width: 20 mm, shear: 2 MPa, peel: 10 MPa, opens: out, shear-strength: 300 psi, origin: a sheet}
                  fittings:
                    - {id: L1, name: Latch pin, at: Q, arm: "0 -25", arm-out: 5 mm, on: carrier, axis: along, clearance: 0.5 mm, hole: part}
            """;

    private static DefinitionFolder with(String frame) {
        return Teasel.changed("fits.yaml", "  - id: fairing-round\n", "  - id: fairing-round\n" + frame);
    }

    private static FitFrame read() {
        return DefinitionReader.read(with(FRAME))
                .definition()
                .orElseThrow()
                .fits()
                .get("fairing-round")
                .frame();
    }

    private static List<String> problems(String from, String to) {
        assertThat(FRAME).contains(from);
        return DefinitionReader.read(with(FRAME.replace(from, to))).problems().stream()
                .map(InputProblem::sentence)
                .toList();
    }

    @Test
    void should_read_places_sections_and_beams_in_millimetres_and_newtons() {
        FrameBeams b = read().beams().orElseThrow();
        assertThat(b.creeps()).isTrue();
        assertThat(b.mismatchIn()).isEqualTo("dry");
        assertThat(b.plane()).isFalse();
        assertThat(b.place("Q").orElseThrow().at().xMm()).isEqualTo(254, within(1e-9));
        assertThat(b.place("R").orElseThrow().at().xMm()).isEqualTo(200, within(1e-9));
        assertThat(b.place("R").orElseThrow().at().zMm()).isEqualTo(25.4, within(1e-9));
        assertThat(b.place("P").orElseThrow().runMm()).hasValue(80);
        BeamSection rail = ((FrameSection.Plain) b.sections().get(0).form()).section();
        assertThat(rail.eMpa() * rail.areaMm2()).isEqualTo(2400, within(1e-9));
        assertThat(rail.eMpa() * rail.izMm4()).isEqualTo(95e6, within(1e-3));
        assertThat(rail.eMpa() * rail.iyMm4()).isEqualTo(60e6, within(1e-3));
        assertThat(rail.gMpa() * rail.jMm4()).isEqualTo(20e6, within(1e-3));
        assertThat(b.sections().get(1).assumed()).isTrue();
        assertThat(((FrameSection.Plain) b.sections().get(1).form()).section().eMpa())
                .isEqualTo(68_947.57, within(0.01));
        assertThat(b.part().get(1).facing()).isEqualTo(FrameWay.UP);
    }

    @Test
    void should_read_clamps_adhesive_fittings_and_widths() {
        FrameBeams b = read().beams().orElseThrow();
        assertThat(b.clamps().get(0).offMm()).hasValue(-2);
        assertThat(b.clamps().get(0).acts()).isEqualTo(Clamp.Way.ALONG_ONLY);
        assertThat(b.clamps().get(0).closesToMm()).isEqualTo(0.2, within(1e-12));
        assertThat(b.clamps().get(1).station()).isEqualTo("A");
        assertThat(b.adhesive().orElseThrow().shearStrengthMpa().getAsDouble()).isEqualTo(2.068, within(0.001));
        assertThat(b.adhesive().orElseThrow().peelStrengthMpa()).isEmpty();
        assertThat(b.fittings().get(0).hole()).isEqualTo(Body.PART);
        assertThat(b.fittings().get(0).arm().zMm()).isEqualTo(5, within(1e-12));
        assertThat(read().width("W1").orElseThrow().between()).containsExactly("P", "Q");
        assertThat(read().width("W1").orElseThrow().bondTakes().orElseThrow().asTyped())
                .isEqualTo("-1 mm");
    }

    @Test
    void should_refuse_what_is_not_there_with_what_was_expected() {
        assertThat(problems("{through: [P, Q], section: tube}", "{through: [P, X], section: tubes}"))
                .anySatisfy(s -> assertThat(s).contains("\"X\"").contains("a place of this frame: P, Q, R"))
                .anySatisfy(s -> assertThat(s).contains("\"tubes\"").contains("a section of this frame"));
        assertThat(problems("at: R, way: along, station: A", "at: Z, way: along, station: nowhere"))
                .anySatisfy(s -> assertThat(s).contains("\"Z\"").contains("a place that the part goes through"))
                .anySatisfy(s -> assertThat(s).contains("\"nowhere\"").contains("a station of this fit"));
        assertThat(problems("between: [P, Q]", "between: [P]"))
                .anySatisfy(s -> assertThat(s).contains("two places"));
        assertThat(problems("at: Q, arm: \"0 -25\"", "at: R, arm: \"0 -25\""))
                .anySatisfy(s -> assertThat(s).contains("a place that the carrier goes through"));
        assertThat(problems("read-in: dry", "read-in: drying"))
                .anySatisfy(s -> assertThat(s).contains("a state of this fit"));
    }

    @Test
    void should_refuse_figures_that_make_no_frame() {
        assertThat(problems("wall: 2 mm", "wall: 11 mm"))
                .anySatisfy(s -> assertThat(s).contains("a wall that leaves room inside"));
        assertThat(problems(", out: 60 Nm2, twist: 20 N*m2", ""))
                .anySatisfy(s -> assertThat(s).contains("no stiffness out of the plane"));
        assertThat(problems("{id: Q, at: \"10 0 in\"}", "{id: Q, at: \"0 0\"}"))
                .anySatisfy(s -> assertThat(s).contains("a place apart from the one before"));
        assertThat(problems("{through: [P, Q], section: tube}", "{through: [P, Q], section: tube, facing: along}"))
                .anySatisfy(s -> assertThat(s)
                        .contains("a beam from P to Q that runs the way it faces, along")
                        .contains("square to the beam"));
        assertThat(problems("off: -2 mm, ", "off: -2 mm, station: A, "))
                .anySatisfy(s -> assertThat(s).contains("exactly one of off, station"));
        assertThat(problems("through: [Q, R]", "through: [Q]"))
                .anySatisfy(s -> assertThat(s).contains("two places at least"));
        assertThat(problems("{id: P, at: \"0 0\", run: 80 mm}", "{id: Q, at: \"0 0\", run: 80 mm}"))
                .anySatisfy(s -> assertThat(s).contains("each id of a place once"));
    }
}
