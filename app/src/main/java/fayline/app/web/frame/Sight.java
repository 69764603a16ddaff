package fayline.app.web.frame;

import fayline.app.usecase.view.Latest;
import fayline.app.usecase.view.SaidByName;
import fayline.app.usecase.view.ShopView;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.units.Area;
import fayline.basis.units.Length;
import fayline.basis.units.Mass;
import fayline.basis.units.Quantity;
import fayline.basis.units.QuantityFormat;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Made;
import fayline.flow.result.ProjectResult;
import fayline.flow.result.step.StepResult;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One project as a screen sees it now: definition, what follows from it, the plan, and how to word it all. */
public final class Sight {
    private final ShopView view;
    private final Latest latest;
    private final QuantityFormat format;
    private final TimeWords time;
    private final SaidByName names;
    private final Map<String, Plan.PlannedStep> planned = new HashMap<>();
    private final Map<String, StepResult> steps = new HashMap<>();
    private final Map<String, WorkStep> works = new HashMap<>();

    /**
     * Makes a sight.
     *
     * @param view what a use case says
     * @param latest how far the record was before it was looked at
     * @param format the screen's units
     * @param time the shop's moment
     */
    public Sight(ShopView view, Latest latest, QuantityFormat format, TimeWords time) {
        this.view = view;
        this.latest = latest;
        this.format = format;
        this.time = time;
        names = new SaidByName(view);
        view.plan().steps().forEach(s -> planned.putIfAbsent(s.step(), s));
        view.result().steps().forEach(s -> steps.putIfAbsent(s.id(), s));
        view.work().steps().forEach(s -> works.putIfAbsent(s.id(), s));
    }

    /** All that is seen. */
    public ShopView view() {
        return view;
    }

    /** How far the record was before it was looked at. */
    public Latest latest() {
        return latest;
    }

    /** The work of all projects. */
    public Work work() {
        return view.work();
    }

    /** The definition now. */
    public Definition definition() {
        return view.definition();
    }

    /** What follows from it. */
    public ProjectResult result() {
        return view.result();
    }

    /** The plan now. */
    public Plan plan() {
        return view.plan();
    }

    /** The screen's units. */
    public QuantityFormat format() {
        return format;
    }

    /** The shop's moment and how to word it. */
    public TimeWords time() {
        return time;
    }

    /** When a step is planned, was or is at work. */
    public Optional<Plan.PlannedStep> planned(String step) {
        return Optional.ofNullable(planned.get(step));
    }

    /** A step of this project. */
    public Optional<StepResult> step(String id) {
        return Optional.ofNullable(steps.get(id));
    }

    /** The work of a step, of whatever project. */
    public Optional<WorkStep> work(String id) {
        return Optional.ofNullable(works.get(id));
    }

    /** A step's title and what it is done on. */
    public String stepName(String id) {
        return names.stepName(id);
    }

    /** A sentence with ids replaced by what people call the things. */
    public String named(String sentence) {
        return names.named(sentence);
    }

    /** A part or joint. */
    public Optional<Made> made(String id) {
        return names.made(id);
    }

    /** What people call a part or joint. */
    public String madeName(String id) {
        return made(id).map(Made::name).orElse(id);
    }

    /** The page of a part or joint. */
    public String madeLink(String id) {
        return (view.definition().joints().find(id).isPresent() ? "/joint/" : "/part/") + Visit.encoded(id);
    }

    /** The page of a step's card. */
    public static String cardLink(String step) {
        String[] parts = step.split("/");
        if (parts.length != 4) {
            return "/";
        }
        return "/card/" + Visit.encoded(parts[1]) + "/" + Visit.encoded(parts[2]) + "/" + Visit.encoded(parts[3])
                + "?project=" + Visit.encoded(parts[0]);
    }

    /** The page on which who, where and when of a step are decided. */
    public static String wishLink(String step) {
        return cardLink(step).replaceFirst("^/card/", "/wish/");
    }

    /** What people call someone. */
    public String personName(String id) {
        return view.definition().shop().people().find(id).map(p -> p.name()).orElse(id);
    }

    /** Names joined. */
    public String personNames(List<String> ids) {
        return String.join(", ", ids.stream().map(this::personName).toList());
    }

    /** What people call a mould, stand or port. */
    public String placeName(String id) {
        return view.definition()
                .shop()
                .moulds()
                .find(id)
                .map(m -> m.name())
                .or(() -> view.definition().shop().stands().find(id).map(s -> s.name()))
                .or(() -> view.definition().shop().ports().find(id).map(p -> p.name()))
                .orElse(id);
    }

    /** Names joined. */
    public String placeNames(List<String> ids) {
        return String.join(", ", ids.stream().map(this::placeName).toList());
    }

    /** What people call a material or system. */
    public String stuffName(String id) {
        return view.definition()
                .materials()
                .find(id)
                .map(m -> m.name())
                .or(() -> view.definition().systems().find(id).map(s -> s.name()))
                .or(() -> made(id).map(Made::name))
                .orElse(id);
    }

    /** A sentence in the screen's units. */
    public String say(Phrase phrase) {
        return phrase.in(format.system());
    }

    /** What findings say, in the screen's units, each once. */
    public List<String> say(List<Finding> findings) {
        return findings.stream()
                .map(f -> f.sentence(format.system()))
                .distinct()
                .toList();
    }

    /** A quantity in the screen's units. */
    public String amount(Quantity q) {
        if (q instanceof Mass m) {
            return format.mass(m);
        }
        if (q instanceof Area a) {
            return format.area(a);
        }
        if (q instanceof Length l) {
            return format.length(l);
        }
        return String.valueOf(q.si());
    }

    /**
     * Who sends a form: who is signed in, whatever the form says; where nobody signs in, the one it names, remembered for the
     * next one.
     *
     * @throws Refusal if nobody is named, or nobody of the crew
     */
    public String sender(Visit visit) {
        if (visit.actor().isPresent()) {
            return visit.person();
        }
        String by = visit.needed("by", "Who you are");
        if (definition().shop().people().find(by).isEmpty()) {
            throw Refusal.input("Nobody of that name is in the crew.");
        }
        visit.remember("person", by);
        return by;
    }
}
