package fayline.flow.result.fit.frame;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.numeric.DenseMatrix;
import fayline.flow.project.fit.frame.FrameAdhesive;
import fayline.flow.project.fit.frame.FrameBeams;
import fayline.flow.project.fit.frame.FrameClamp;
import fayline.flow.project.fit.frame.FrameHold;
import fayline.flow.project.fit.frame.FramePlace;
import fayline.method.fitup.frame.Axis;
import fayline.method.fitup.frame.BeamSection;
import fayline.method.fitup.frame.Frame;
import fayline.method.fitup.frame.NodeFreedom;
import fayline.method.fitup.frame.bond.BondSpring;
import fayline.method.fitup.frame.spring.Clamp;
import fayline.method.fitup.frame.spring.ClampLimits;
import fayline.method.fitup.frame.spring.SpringBack;
import fayline.method.fitup.frame.spring.SpringBackCalculator;
import fayline.method.fitup.frame.spring.SpringBackResult;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * What a frame told as beams does: how hard each clamp pulls, what the bond carries once they are off, how far it springs back,
 * where latch pins and hinge points go. How far the part stands off is entered or comes from the readings of the dry fit; without
 * it there is no answer, and no strength is judged that was not entered.
 */
public final class SprungCalculator {
    private SprungCalculator() {}

    /**
     * Answers the question.
     *
     * @return empty where the frame is not told as beams
     */
    public static Optional<SprungResult> calculate(SprungQuestion question) {
        return question.fit().frame().beams().map(b -> answer(question, b));
    }

    private static SprungResult answer(SprungQuestion q, FrameBeams beams) {
        SprungSections stiffness = new SprungSections(q.laminates(), q.materials());
        List<UsedSection> sections =
                beams.sections().stream().flatMap(s -> stiffness.of(s).stream()).toList();
        SprungPulls offs = new SprungPulls(q);
        List<Pull> pulls =
                beams.clamps().stream().flatMap(c -> offs.of(c).stream()).toList();
        List<String> missing = new ArrayList<>(stiffness.missing());
        missing.addAll(offs.missing());
        if (!missing.isEmpty()) {
            return unanswered(q, beams, missing, sections, pulls, List.of());
        }
        SprungNodes nodes = new SprungNodes(beams);
        SpringBackResult result;
        SpringBack question;
        try {
            question = question(beams, nodes, sections, pulls);
            result = SpringBackCalculator.calculate(question, nodes);
        } catch (IllegalArgumentException e) {
            Finding stop = new Finding(Severity.STOP, "frame", e.getMessage() + ".", "the definition");
            return unanswered(q, beams, List.of(), sections, pulls, List.of(stop));
        }
        if (result.shape().isEmpty()) {
            return unanswered(q, beams, List.of(), sections, pulls, result.findings());
        }
        SprungShape shape =
                new SprungShapes(q, beams, nodes, question, result.shape().get(), pulls).shape();
        return new SprungResult(
                q.fit(),
                beams,
                List.of(),
                assumed(beams, sections),
                sections,
                pulls,
                Optional.of(shape),
                SprungFindings.of(beams, shape, result));
    }

    private static SprungResult unanswered(
            SprungQuestion q,
            FrameBeams beams,
            List<String> missing,
            List<UsedSection> sections,
            List<Pull> pulls,
            List<Finding> findings) {
        return new SprungResult(
                q.fit(), beams, missing, assumed(beams, sections), sections, pulls, Optional.empty(), findings);
    }

    private static List<String> assumed(FrameBeams beams, List<UsedSection> sections) {
        List<String> all = new ArrayList<>();
        sections.stream()
                .filter(UsedSection::assumed)
                .forEach(s -> all.add("Stiffness of section " + s.section().id() + ": " + s.origin()));
        beams.adhesive()
                .filter(FrameAdhesive::assumed)
                .ifPresent(a -> all.add("Stiffness and strength of the adhesive: " + a.origin()));
        return all;
    }

    private static SpringBack question(
            FrameBeams beams, SprungNodes nodes, List<UsedSection> sections, List<Pull> pulls) {
        Map<String, BeamSection> stiff = new LinkedHashMap<>();
        sections.forEach(s -> stiff.put(s.section().id(), s.beam()));
        Frame part = nodes.part(stiff);
        Frame carrier = nodes.carrier(stiff);
        return new SpringBack(
                part,
                carrier,
                bonds(beams, nodes, carrier),
                held(beams.rests(), p -> nodes.part(p), nodes),
                held(beams.held(), p -> nodes.carrier(p).or(() -> nodes.part(p)), nodes),
                pulls.stream().map(p -> clamp(p, nodes)).toList(),
                List.of(),
                covariance(pulls),
                beams.adhesive().map(a -> a.opens().axis()),
                List.of(),
                ClampLimits.USUAL,
                beams.creeps());
    }

    private static List<BondSpring> bonds(FrameBeams beams, SprungNodes nodes, Frame carrier) {
        List<BondSpring> all = new ArrayList<>();
        beams.adhesive().ifPresent(a -> {
            Axis opens = a.opens().axis();
            for (FramePlace p : nodes.bonded()) {
                int of = nodes.carrier(p.id()).orElseThrow();
                double run = p.runMm().orElse(carrier.tributaryMm(of));
                all.add(BondSpring.ofFilm(
                                nodes.part(p.id()).orElseThrow(),
                                of,
                                run * a.widthMm(),
                                a.thicknessMm(),
                                a.shearMpa(),
                                a.peelMpa(),
                                opens)
                        .over(run));
            }
        });
        return all;
    }

    private static List<NodeFreedom> held(
            List<FrameHold> holds, Function<String, Optional<Integer>> node, SprungNodes nodes) {
        List<NodeFreedom> all = new ArrayList<>();
        for (FrameHold h : holds) {
            int at = node.apply(h.at())
                    .orElseThrow(() -> new IllegalArgumentException("Place " + h.at() + " is held, but has no beam"));
            h.ways().forEach(w -> all.add(new NodeFreedom(at, w.freedom())));
        }
        return all.stream().distinct().toList();
    }

    private static Clamp clamp(Pull p, SprungNodes nodes) {
        FrameClamp c = p.clamp();
        int at = nodes.part(c.at())
                .orElseThrow(() -> new IllegalArgumentException(
                        "Clamp " + c.id() + " is at " + c.at() + ", where the part has no beam"));
        return new Clamp(c.id(), new NodeFreedom(at, c.way().freedom()), p.offMm(), c.closesToMm(), c.acts());
    }

    private static Optional<DenseMatrix> covariance(List<Pull> pulls) {
        if (pulls.isEmpty() || pulls.stream().anyMatch(p -> p.sureMm().isEmpty())) {
            return Optional.empty();
        }
        double[][] rows = new double[pulls.size()][pulls.size()];
        for (int i = 0; i < rows.length; i++) {
            double u = pulls.get(i).sureMm().getAsDouble();
            rows[i][i] = u * u;
        }
        return Optional.of(DenseMatrix.of(rows));
    }
}
