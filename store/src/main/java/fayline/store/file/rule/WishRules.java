package fayline.store.file.rule;

import fayline.flow.project.catalog.Keyed;
import fayline.flow.project.design.Made;
import fayline.flow.project.piece.Division;
import fayline.flow.project.shop.LeadWish;
import fayline.store.file.kind.Kind;
import fayline.store.file.yaml.Nearest;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A wish is for one thing, of people and places that exist. Its step may be gone: designs change, and what was wished of a step that
 * is no more is told and binds nobody.
 */
final class WishRules {
    private static final List<String> THINGS = List.of("with", "without", "at", "away-from");

    private final Draft d;
    private final Problems problems;

    WishRules(Draft draft, Problems problems) {
        this.d = draft;
        this.problems = problems;
    }

    void check() {
        List<String> people = Draft.ids(d.people());
        List<String> places = new ArrayList<>(Draft.ids(d.moulds()));
        d.whole().shop().stands().forEach(s -> places.add(s.id()));
        d.whole().shop().ports().forEach(p -> places.add(p.id()));
        for (Placed<LeadWish> w : d.wishes()) {
            oneThing(w.at());
            known(w.at(), "with", people, "a person", Kind.PEOPLE);
            known(w.at(), "without", people, "a person", Kind.PEOPLE);
            known(w.at(), "at", places, "a mould, stand or port", Kind.MOULDS, Kind.SHOP);
            known(w.at(), "away-from", places, "a mould, stand or port", Kind.MOULDS, Kind.SHOP);
            known(w.at(), "together", Draft.ids(d.wishes()), "a wish", Kind.WISHES);
            if (w.sound()) {
                inOrder(w);
                step(w);
            }
        }
    }

    private void oneThing(Tree at) {
        List<String> named = THINGS.stream().filter(k -> at.get(k).isPresent()).toList();
        boolean start = at.get("from").isPresent() || at.get("before").isPresent();
        int n = named.size() + (start ? 1 : 0);
        if (n != 1) {
            problems.stop(
                    at,
                    n == 0 ? "a wish for nothing" : "a wish for " + n + " things at once",
                    "one of with, without, at, away-from, or a start by from, before or both",
                    n == 0 ? "" : "make a wish of each");
        }
    }

    private void known(Tree at, String key, Collection<String> known, String what, Kind... kinds) {
        if (d.all(kinds)) {
            at.get(key)
                    .filter(t -> t.form() == Tree.Form.SCALAR
                            && !t.isBlank()
                            && !known.contains(t.text())
                            && !isOfASet(t.text()))
                    .ifPresent(t -> problems.stop(
                            t, Problems.quote(t.text()), what + " that exists", Nearest.suggest(t.text(), known)));
        }
    }

    /** Whether it is the mould of a set of pieces. */
    private boolean isOfASet(String id) {
        return d.whole().shop().moulds().stream().anyMatch(m -> m.each() && Division.isSet(m.id(), id));
    }

    private void inOrder(Placed<LeadWish> w) {
        LeadWish wish = w.value();
        if (wish.from().isPresent()
                && wish.before().isPresent()
                && !wish.from().get().isBefore(wish.before().get())) {
            Tree before = w.at().down("before");
            problems.stop(
                    before,
                    Problems.quote(before.text()),
                    "later than from (" + wish.from().get() + ")",
                    "");
        }
    }

    private void step(Placed<LeadWish> w) {
        String[] bits = w.value().step().split("/", -1);
        if (!bits[0].equals(d.whole().facts().id()) || !d.all(Kind.PARTS, Kind.JOINTS, Kind.RECIPES)) {
            return;
        }
        Optional<Made> made = d.made(bits[1]).or(() -> Division.partOf(d.whole(), bits[1]));
        int n = Integer.parseInt(bits[2]);
        Set<String> steps = made.map(m -> References.steps(d, m, n)).orElse(Set.of());
        if (!steps.contains(bits[3])) {
            Collection<String> known = made.isPresent()
                    ? steps
                    : d.made().stream()
                            .map(p -> (Keyed) p.value())
                            .map(Keyed::id)
                            .toList();
            Tree at = w.at().down("step");
            problems.caution(
                    at,
                    Problems.quote(at.text())
                            + ", a step that is not there any more, so that nobody is bound by the wish",
                    "a step of the project",
                    Nearest.suggest(made.isPresent() ? bits[3] : bits[1], known));
        }
    }
}
