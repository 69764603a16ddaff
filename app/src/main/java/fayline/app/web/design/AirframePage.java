package fayline.app.web.design;

import fayline.app.drawing.Mark;
import fayline.app.drawing.MassBar;
import fayline.app.drawing.SvgRenderer;
import fayline.app.usecase.laminate.CheckLaminates;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.app.web.laminate.LaminatePage;
import fayline.basis.units.Mass;
import fayline.flow.plan.WorkStep;
import fayline.flow.project.design.Assembly;
import fayline.flow.project.design.Hand;
import fayline.flow.project.design.Joint;
import fayline.flow.project.design.Part;
import fayline.flow.result.laminate.LaminateCheck.Verdict;
import fayline.flow.result.quantity.PartResult;
import fayline.flow.result.step.StepResult;
import io.javalin.config.RoutesConfig;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The airframe: the tree with state, mass against target and progress. */
public final class AirframePage implements Page {
    private final Sights sights;

    /** Makes the page. */
    public AirframePage(Sights sights) {
        this.sights = sights;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/airframe", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(
                    visit,
                    sight -> sights.show(
                            visit, "airframe.jte", sights.frame(visit, sight, "Airframe", "/airframe"), view(sight)));
        });
    }

    /** Hands-on minutes and masses of a branch. */
    private static final class Sum {
        private double done;
        private double all;
        private int running;
        private double massKg;
        private double budgetedKg;

        private void add(Sum other) {
            done += other.done;
            all += other.all;
            running += other.running;
            massKg += other.massKg;
            budgetedKg += other.budgetedKg;
        }

        private int percent() {
            return all <= 0 ? 0 : (int) Math.floor(100 * done / all + 1e-9);
        }
    }

    static AirframeView view(Sight sight) {
        Sum whole = new Sum();
        List<AirframeView.Node> roots = new ArrayList<>();
        for (Assembly a : sight.definition().assemblies()) {
            if (a.in().isEmpty()
                    || sight.definition().assemblies().find(a.in().get()).isEmpty()) {
                Sum sum = new Sum();
                roots.add(assembly(sight, a, sum, 0));
                whole.add(sum);
            }
        }
        List<AirframeView.Node> loose = made(sight, "", whole);
        if (!loose.isEmpty()) {
            roots.addAll(loose);
        }
        return new AirframeView(
                roots,
                whole.percent() + " % of all hands-on time is done",
                "Adhesive in joints, paint, wiring and fasteners are not in these masses unless they are parts. Estimates"
                        + " are replaced by weighings; the final weighing is done and signed by the authorised person.",
                CheckLaminates.all(sight.definition()).stream()
                        .map(c -> new AirframeView.Held(
                                c.laminate().name(),
                                LaminatePage.link(c.laminate().id()),
                                c.verdict().words(),
                                c.verdict() == Verdict.NOT_WITHIN))
                        .toList());
    }

    private static AirframeView.Node assembly(Sight sight, Assembly a, Sum sum, int depth) {
        List<AirframeView.Node> below = new ArrayList<>();
        if (depth < 20) {
            for (Assembly inner : sight.definition().assemblies()) {
                if (inner.in().filter(a.id()::equals).isPresent()) {
                    Sum s = new Sum();
                    below.add(assembly(sight, inner, s, depth + 1));
                    sum.add(s);
                }
            }
        }
        below.addAll(made(sight, a.id(), sum));
        Mass mass = Mass.ofKilograms(sum.massKg);
        return new AirframeView.Node(
                a.name(),
                "",
                "assembly",
                "",
                word(sum),
                mark(sum),
                sum.percent(),
                sight.format().mass(mass)
                        + a.target().map(t -> " of " + sight.format().mass(t)).orElse("")
                        + (sum.budgetedKg > 0
                                ? ", " + sight.format().mass(Mass.ofKilograms(sum.budgetedKg)) + " of it only budgeted"
                                : ""),
                bar(sight, mass, a.target(), false),
                below);
    }

    private static List<AirframeView.Node> made(Sight sight, String in, Sum sum) {
        List<AirframeView.Node> nodes = new ArrayList<>();
        for (Part p : sight.definition().parts()) {
            if (isIn(sight, p.in(), in)) {
                Sum own = progress(sight, p.id());
                Optional<PartResult> result = sight.result().part(p.id());
                Mass mass = result.map(PartResult::best).orElse(Mass.ofKilograms(0));
                own.massKg = mass.kilograms();
                PartResult.MassBasis basis = result.map(PartResult::basis).orElse(PartResult.MassBasis.BUDGETED);
                boolean budgeted = basis == PartResult.MassBasis.BUDGETED;
                own.budgetedKg = budgeted ? own.massKg : 0;
                Optional<Mass> target = p.target().map(t -> t.value());
                nodes.add(new AirframeView.Node(
                        p.name(),
                        sight.madeLink(p.id()),
                        "part",
                        p.hand() == Hand.NONE ? "" : p.hand().key(),
                        word(own),
                        mark(own),
                        own.percent(),
                        budgeted
                                ? "only budgeted: "
                                        + target.map(t -> sight.format().mass(t))
                                                .orElse("no target")
                                : sight.format().mass(mass)
                                        + (basis == PartResult.MassBasis.WEIGHED ? " weighed" : " computed")
                                        + target.map(t ->
                                                        " of " + sight.format().mass(t))
                                                .orElse(""),
                        budgeted ? "" : bar(sight, mass, target, basis == PartResult.MassBasis.WEIGHED),
                        List.of()));
                sum.add(own);
            }
        }
        for (Joint j : sight.definition().joints()) {
            if (isIn(sight, j.in(), in)) {
                Sum own = progress(sight, j.id());
                nodes.add(new AirframeView.Node(
                        j.name(),
                        sight.madeLink(j.id()),
                        "joint",
                        "",
                        word(own),
                        mark(own),
                        own.percent(),
                        "",
                        "",
                        List.of()));
                sum.add(own);
            }
        }
        return nodes;
    }

    private static boolean isIn(Sight sight, String own, String asked) {
        return asked.isEmpty() ? sight.definition().assemblies().find(own).isEmpty() : own.equals(asked);
    }

    private static Sum progress(Sight sight, String made) {
        Sum sum = new Sum();
        for (StepResult s : sight.result().stepsOf(made)) {
            // a step without hands still counts a little, so that a finished cure is seen
            double weight = Math.max(1, s.personMinutes());
            sum.all += weight;
            if (s.work().state() == WorkStep.State.DONE) {
                sum.done += weight;
            } else if (s.work().state() == WorkStep.State.RUNNING) {
                sum.running++;
            }
        }
        return sum;
    }

    private static String word(Sum sum) {
        if (sum.all <= 0) {
            return "no steps";
        }
        return sum.running > 0 ? "at work" : sum.done <= 0 ? "to do" : sum.done >= sum.all - 1e-9 ? "done" : "begun";
    }

    private static Mark mark(Sum sum) {
        return sum.running > 0 ? Mark.HANDS : sum.all > 0 && sum.done >= sum.all - 1e-9 ? Mark.DONE : Mark.WAITING;
    }

    private static String bar(Sight sight, Mass mass, Optional<Mass> target, boolean weighed) {
        return target.filter(t -> t.kilograms() > 0)
                .map(t -> SvgRenderer.forScreen().render(MassBar.of(mass, t, weighed, sight.format())))
                .orElse("");
    }
}
