package fayline.flow.result.change;

import fayline.flow.project.Definition;
import fayline.flow.project.chain.FitChain;
import fayline.flow.project.design.Joint;
import fayline.flow.project.design.Made;
import fayline.flow.project.design.Part;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.stock.Delivery;
import fayline.flow.result.change.Reached.Group;
import fayline.flow.result.change.Reached.Standing;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.step.StepResult;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Finds everything that a change touches, by following the references of the definition: what is made otherwise (over laminates, recipes,
 * materials, resins, moulds, the drawing that two hands share), and what hangs on that. Steps already begun or finished tell what is made.
 *
 * <p>Source: common practice in configuration management (evaluation of a change, ISO 10007:2017, 5.4.3, from memory). Left out: what no file of the definition
 * names, such as two outlines that must agree.
 */
public final class ReachCalculator {
    private final Definition d;
    private final ShopState state;
    private final Map<String, List<StepResult>> steps;
    private final List<Reached> reached = new ArrayList<>();
    private final Map<String, List<String>> made;
    private final Set<String> touched;

    private ReachCalculator(Definition d, List<Touch> touches, List<StepResult> all, ShopState state) {
        this.d = d;
        this.state = state;
        this.steps =
                all.stream().collect(Collectors.groupingBy(StepResult::made, LinkedHashMap::new, Collectors.toList()));
        this.made = new MadeOtherwise(d, all).of(touches);
        this.touched = touches.stream().map(Touch::key).collect(Collectors.toCollection(HashSet::new));
    }

    /**
     * What a change touches.
     *
     * @param d the definition, with what is on order
     * @param touches what is altered; what the definition does not hold is passed over
     * @param steps the project's steps
     * @param state what has happened to them
     */
    public static ChangeResult calculate(Definition d, List<Touch> touches, List<StepResult> steps, ShopState state) {
        ReachCalculator all = new ReachCalculator(d, touches, steps, state);
        all.design(touches);
        all.made();
        all.beside();
        all.moulds();
        all.fits();
        all.orders();
        all.checks();
        all.steps();
        all.reached.sort(Comparator.comparing(Reached::group));
        return new ChangeResult(all.reached);
    }

    /**
     * The parts and joints that are made otherwise, as far as the definition tells it without any step.
     *
     * @param d the definition
     * @param touches what is altered
     */
    public static List<String> madeOtherwise(Definition d, List<Touch> touches) {
        return List.copyOf(new MadeOtherwise(d, List.of()).of(touches).keySet());
    }

    private void add(Group group, String id, String name, List<String> why, Standing standing, String detail) {
        if (!why.isEmpty()) {
            reached.add(new Reached(group, id, name, why.stream().distinct().toList(), standing, detail));
        }
    }

    private void design(List<Touch> touches) {
        for (Touch t : touches) {
            boolean own = t.sort() != Touch.Sort.PART
                    && t.sort() != Touch.Sort.JOINT
                    && t.sort() != Touch.Sort.FIT
                    && t.sort() != Touch.Sort.MOULD;
            if (own && t.isIn(d)) {
                add(Group.DESIGN, t.key(), words(t), List.of("altered itself"), Standing.NONE, "");
            }
        }
    }

    private String words(Touch t) {
        String sort = t.sort().key();
        return sort.substring(0, 1).toUpperCase(Locale.ROOT) + sort.substring(1) + " " + t.name(d);
    }

    private void made() {
        for (Made m : mades()) {
            List<String> why = made.getOrDefault(m.id(), List.of());
            add(Group.MADE, m.id(), m.name(), why, standing(m.id()), drawing(m));
            long open = own(m.id()).stream().filter(s -> !isFinished(s)).count();
            long begun = own(m.id()).stream()
                    .filter(s -> !isFinished(s) && facts(s).isPresent())
                    .count();
            if (open > 0) {
                add(
                        Group.CARD,
                        m.id(),
                        m.name(),
                        why,
                        Standing.NONE,
                        open
                                + (open == 1 ? " card to be worked by" : " cards to be worked by")
                                + (begun == 0 ? "" : ", " + begun + " at work"));
            }
        }
    }

    private List<Made> mades() {
        return Stream.<Made>concat(d.parts().stream(), d.joints().stream()).toList();
    }

    private void beside() {
        for (Made m : mades()) {
            if (!made.containsKey(m.id())) {
                List<String> why = new ArrayList<>();
                besideParts(m, why);
                add(Group.BESIDE, m.id(), m.name(), why, standing(m.id()), drawing(m));
            }
        }
    }

    private void besideParts(Made m, List<String> why) {
        for (String id : made.keySet()) {
            String name = nameOf(id);
            if (m instanceof Joint j && MadeOtherwise.joins(j, id)) {
                why.add("bonds " + name);
            }
            if (m instanceof Part p && p.opposite().filter(id::equals).isPresent()) {
                why.add("other hand of " + name);
            }
            Optional<Joint> joint = d.joints().find(id);
            if (joint.filter(j -> MadeOtherwise.joins(j, m.id())).isPresent()) {
                why.add("bonded by " + name);
            }
            if (m.make().stream().flatMap(k -> k.after().stream()).anyMatch(a -> isOf(a, id))) {
                why.add("comes after " + name);
            }
        }
    }

    private void moulds() {
        for (var mould : d.shop().moulds()) {
            List<String> why = new ArrayList<>();
            if (touched.contains("mould/" + mould.id())) {
                why.add("altered itself");
            }
            List<Part> from = d.parts().stream()
                    .filter(p -> p.mould().filter(mould.id()::equals).isPresent())
                    .toList();
            from.stream().filter(p -> made.containsKey(p.id())).forEach(p -> why.add(p.name() + " is made in it"));
            add(Group.MOULD, mould.id(), mould.name(), why, Standing.NONE, others(from));
        }
    }

    /** What else comes off a mould, and so keeps it as it is. */
    private String others(List<Part> from) {
        String others = from.stream()
                .filter(p -> !made.containsKey(p.id()))
                .map(Part::name)
                .collect(Collectors.joining(", "));
        return others.isEmpty() ? "" : "also makes " + others;
    }

    private void fits() {
        for (Fit f : d.fits()) {
            List<String> why = new ArrayList<>();
            if (touched.contains("fit/" + f.id())) {
                why.add("altered itself");
            }
            f.part().filter(made::containsKey).ifPresent(p -> why.add("of " + nameOf(p)));
            f.joint().filter(made::containsKey).ifPresent(j -> why.add("read before " + nameOf(j)));
            f.against().stream().filter(made::containsKey).forEach(a -> why.add("against " + nameOf(a)));
            add(Group.FIT, "fit/" + f.id(), f.name(), why, Standing.NONE, "");
            if (f.outline().isPresent()) {
                add(Group.TEMPLATE, f.id(), f.name(), why, Standing.NONE, "");
            }
        }
        for (FitChain c : d.chains()) {
            List<String> why = new ArrayList<>();
            c.links().stream()
                    .flatMap(l -> Stream.of(l.part(), l.carrier()))
                    .filter(made::containsKey)
                    .forEach(p -> why.add("carries " + nameOf(p)));
            reached.stream()
                    .filter(r -> r.group() == Group.FIT && r.id().equals("fit/" + c.endsAt()))
                    .forEach(r -> why.add("ends at " + r.name()));
            add(Group.FIT, "chain/" + c.id(), c.name(), why, Standing.NONE, "");
        }
    }

    private void orders() {
        for (Delivery o : d.deliveries()) {
            List<String> why = new ArrayList<>();
            for (String id : made.keySet()) {
                if (o.what().equals(id) || o.needed().stream().anyMatch(n -> isOf(n, id))) {
                    why.add("for " + nameOf(id));
                }
            }
            if (touched.contains("material/" + o.what()) || touched.contains("system/" + o.what())) {
                why.add("what is ordered is altered");
            }
            String detail = o.arrived().map(a -> "came " + a).orElse("due " + o.planned());
            add(
                    Group.ORDER,
                    o.id(),
                    o.what(),
                    why,
                    o.arrived().isPresent() ? Standing.MADE : Standing.NOT_BEGUN,
                    detail);
        }
    }

    private void checks() {
        for (Made m : mades()) {
            List<String> why = made.getOrDefault(m.id(), List.of());
            if (why.isEmpty()) {
                continue;
            }
            List<StepResult> signed =
                    own(m.id()).stream().filter(StepResult::signed).toList();
            if (!signed.isEmpty()) {
                long done = signed.stream().filter(this::isFinished).count();
                add(
                        Group.CHECK,
                        "holds/" + m.id(),
                        "Hold points of " + m.name(),
                        why,
                        Standing.NONE,
                        done + " of " + signed.size() + " signed");
            }
            if (m instanceof Joint j && j.structural()) {
                add(Group.CHECK, "joint/" + j.id(), "Bond of " + j.name(), why, Standing.NONE, "bears load");
            }
            if (m instanceof Part p) {
                ofPart(p, why);
            }
        }
        stages();
    }

    private void ofPart(Part p, List<String> why) {
        p.zones()
                .forEach(z -> d.laminates()
                        .find(z.laminate())
                        .ifPresent(l -> add(
                                Group.CHECK,
                                "zone/" + p.id() + "/" + z.id(),
                                "Lay-up of " + p.name() + ", " + z.name(),
                                why,
                                Standing.NONE,
                                l.name())));
        p.coupons()
                .forEach(c -> add(
                        Group.CHECK,
                        "pieces/" + p.id() + "/" + c.id(),
                        p.name() + ": " + c.name(),
                        why,
                        Standing.NONE,
                        ""));
        String target = p.target().map(t -> "target " + t.asTyped()).orElse("");
        String weighed = Optional.ofNullable(state.weighed().get(p.id()))
                .map(w -> "weighed " + w.asTyped())
                .orElse("");
        String detail = Stream.of(target, weighed).filter(t -> !t.isEmpty()).collect(Collectors.joining(", "));
        if (!detail.isEmpty()) {
            add(Group.WEIGHT, p.id(), p.name(), why, Standing.NONE, detail);
        }
    }

    private void stages() {
        d.local().stages().forEach(s -> {
            List<String> why = mades().stream()
                    .filter(m -> made.containsKey(m.id()) && (s.of().contains(m.id()) || s.of().contains(m.in())))
                    .map(m -> "looks at " + m.name())
                    .toList();
            add(Group.CHECK, "stage/" + s.id(), "Inspection: " + s.name(), why, Standing.NONE, "");
        });
    }

    private void steps() {
        made.keySet()
                .forEach(id -> own(id).forEach(s -> add(
                        Group.STEP,
                        local(s),
                        s.title() + ", " + nameOf(id),
                        List.of("of " + nameOf(id)),
                        isFinished(s) ? Standing.MADE : facts(s).isPresent() ? Standing.IN_WORK : Standing.NOT_BEGUN,
                        "")));
    }

    private Standing standing(String id) {
        List<StepResult> mine = own(id);
        if (mine.stream().allMatch(s -> facts(s).isEmpty())) {
            return mine.isEmpty() ? Standing.NONE : Standing.NOT_BEGUN;
        }
        return mine.stream().allMatch(this::isFinished) ? Standing.MADE : Standing.IN_WORK;
    }

    private List<StepResult> own(String id) {
        return steps.getOrDefault(id, List.of());
    }

    private String local(StepResult s) {
        return s.made() + "/" + s.make() + "/" + s.key();
    }

    private Optional<ShopState.StepFacts> facts(StepResult s) {
        return Optional.ofNullable(state.steps().get(local(s)));
    }

    private boolean isFinished(StepResult s) {
        return facts(s).flatMap(ShopState.StepFacts::handsEnded).isPresent();
    }

    private String nameOf(String id) {
        return d.parts()
                .find(id)
                .map(Part::name)
                .or(() -> d.joints().find(id).map(Joint::name))
                .orElse(id);
    }

    private static String drawing(Made m) {
        return m instanceof Part p ? p.drawing() : "";
    }

    /** Whether a reference, {@code made} or {@code made/n/step}, is to something made. */
    private static boolean isOf(String reference, String id) {
        return reference.equals(id) || reference.startsWith(id + "/");
    }
}
