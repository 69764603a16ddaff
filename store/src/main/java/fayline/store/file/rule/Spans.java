package fayline.store.file.rule;

import fayline.flow.project.shop.Mould;
import fayline.flow.project.shop.Person;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import java.util.List;
import java.util.Optional;

/** Days, hours and counts that must stand in order. */
final class Spans {
    private final Draft d;
    private final Problems problems;

    Spans(Draft draft, Problems problems) {
        this.d = draft;
        this.problems = problems;
    }

    void check() {
        Tree clock = d.project().down("clock");
        if (d.project().get("clock").isPresent() && !d.whole().facts().demo()) {
            problems.stop(
                    clock,
                    "a fixed clock",
                    "\"clock:\" only in a project with \"demo: yes\"",
                    "remove it; commands take --now for another moment");
        }
        d.people().stream().filter(Placed::sound).forEach(this::person);
        d.moulds().stream().filter(Placed::sound).forEach(this::mould);
        d.deliveries().stream().filter(Placed::sound).forEach(p -> after(p.at(), "due", "latest", false));
        d.lots().stream().filter(Placed::sound).forEach(p -> {
            after(p.at(), "received", "expires", false);
            after(p.at(), "received", "opened", false);
        });
        for (Placed<?> p : d.systems()) {
            List<Tree> points = p.at().down("points").items();
            points.stream()
                    .filter(t -> text(t, "state").filter("pot-life"::equals).isPresent())
                    .filter(t -> t.get("mass").isEmpty())
                    .forEach(t -> problems.stopAtKey(
                            t, "mass", "nothing", "the mixed mass, which a pot life must have", "add mass: 150 g"));
        }
        needsOfMaterials();
    }

    private void person(Placed<Person> p) {
        for (Tree h : p.at().down("hours").items()) {
            after(h, "from", "to", true);
        }
        List<Tree> hours = p.at().down("hours").items();
        for (int i = 0; i < p.value().hours().size(); i++) {
            Person.Hours h = p.value().hours().get(i);
            Optional<Person.Pause> pause = h.pause();
            if (pause.isPresent()
                    && (pause.get().from().isBefore(h.from())
                            || pause.get().to().isAfter(h.to()))) {
                problems.stop(
                        hours.get(i).down("pause"),
                        Problems.quote(hours.get(i).down("pause").text()),
                        "a break within the hours " + h.from() + " to " + h.to(),
                        "");
            }
        }
        p.at().down("absences").items().forEach(a -> after(a, "from", "to", false));
    }

    private void mould(Placed<Mould> p) {
        Mould m = p.value();
        if (m.sinceFull() > m.pulls()) {
            count(p, "since-full", m.sinceFull(), "pulls", m.pulls());
        }
        if (m.sinceTouchUp() > m.pulls()) {
            count(p, "since-touch-up", m.sinceTouchUp(), "pulls", m.pulls());
        }
        if (m.touchUpEvery() > m.fullEvery()) {
            count(p, "touch-up-every", m.touchUpEvery(), "full-every", m.fullEvery());
        }
    }

    private void count(Placed<?> p, String key, int found, String limit, int most) {
        problems.stop(p.at().down(key), String.valueOf(found), "at most " + most + " as " + limit + " says", "");
    }

    /** Texts of dates and times of one form stand in the order of what they mean. */
    private void after(Tree at, String first, String second, boolean strictly) {
        Optional<String> a = text(at, first);
        Optional<String> b = text(at, second);
        if (a.isPresent() && b.isPresent() && a.get().length() == b.get().length()) {
            int order = a.get().compareTo(b.get());
            if (order > 0 || (strictly && order == 0)) {
                problems.stop(
                        at.down(second),
                        Problems.quote(b.get()),
                        (strictly ? "later than " : "not before ") + first + " (" + a.get() + ")",
                        "");
            }
        }
    }

    private static Optional<String> text(Tree at, String key) {
        return at.get(key)
                .filter(t -> t.form() == Tree.Form.SCALAR && !t.isBlank())
                .map(Tree::text);
    }

    /** What cloth, tape and core must state to be reckoned with. */
    private void needsOfMaterials() {
        d.materials().forEach(p -> {
            switch (p.value().kind()) {
                case CLOTH, TAPE -> need(p, "areal-mass", "cloth and tape");
                case CORE -> {
                    need(p, "thickness", "core");
                    if (p.at().get("areal-mass").isEmpty()) {
                        need(p, "density", "core without \"areal-mass:\"");
                    }
                }
                default -> {
                    // the rest is counted or measured as it is drawn
                }
            }
        });
    }

    private void need(Placed<?> p, String key, String what) {
        if (p.at().get(key).isEmpty()) {
            problems.stopAtKey(p.at(), key, "nothing", "\"" + key + ":\", which " + what + " must have", "");
        }
    }
}
