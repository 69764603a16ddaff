package fayline.store.file.rule;

import fayline.flow.project.design.AfterOpposite;
import fayline.flow.project.design.Hand;
import fayline.flow.project.design.Part;
import fayline.flow.project.design.PieceSets;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.piece.Division;
import fayline.flow.project.shop.Mould;
import fayline.store.file.yaml.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Parts that stand for like pieces made in sets, and hands that follow their opposite. */
final class PieceRules {
    private final Draft d;
    private final Problems problems;

    PieceRules(Draft draft, Problems problems) {
        this.d = draft;
        this.problems = problems;
    }

    void check() {
        for (Placed<Part> p : d.parts()) {
            p.value().sets().ifPresent(s -> sets(p, s));
            p.value().afterOpposite().ifPresent(o -> opposite(p, o));
            for (Placed<Part> q : d.parts()) {
                if (q.value().sets().isPresent()
                        && d.whole().parts().find(p.id()).isPresent()
                        && Division.partOf(d.whole(), p.id())
                                .filter(q.value()::equals)
                                .isPresent()) {
                    problems.stop(
                            p.at().down("id"), p.id() + ", which is the name of a set of " + q.id(), "another id", "");
                }
            }
        }
        for (Placed<Fit> f : d.fits()) {
            List<String> parts = new ArrayList<>(f.value().against());
            f.value().part().ifPresent(parts::add);
            parts.stream()
                    .filter(this::isPieces)
                    .findFirst()
                    .ifPresent(id -> problems.stop(
                            f.at(), id + ", which stands for several pieces", "a part that is one piece", ""));
        }
        for (Placed<Mould> m : d.moulds()) {
            if (m.value().each()) {
                mould(m);
            }
        }
    }

    private boolean isPieces(String part) {
        return d.whole().parts().find(part).filter(p -> p.sets().isPresent()).isPresent();
    }

    private void sets(Placed<Part> p, PieceSets s) {
        if (p.value().hand() != Hand.NONE) {
            problems.stop(
                    p.at().down("sets"),
                    "sets of a part with a hand",
                    "a part without \"hand:\"; a left and a right are two parts",
                    "");
        }
        if (s.as().isPresent()) {
            follower(p, s.as().get());
            return;
        }
        if (s.least() > s.most()) {
            problems.stop(
                    p.at().down("sets").down("least"),
                    s.least() + ", more than most: " + s.most(),
                    "a least that is no more than the most",
                    "");
        }
        if (s.most() > s.pieces()) {
            problems.stop(
                    p.at().down("sets").down("most"),
                    s.most() + " of " + s.pieces() + " pieces",
                    "no more than there are pieces",
                    "");
        }
    }

    private void follower(Placed<Part> p, String as) {
        Optional<PieceSets> leads = d.whole().parts().find(as).flatMap(Part::sets);
        if (d.whole().parts().find(as).isPresent()
                && leads.filter(l -> l.as().isEmpty()).isEmpty()) {
            problems.stop(
                    p.at().down("sets").down("as"),
                    as + ", which states no pieces",
                    "a part with \"sets:\" and \"pieces:\"",
                    "");
        }
        for (String key : List.of("mark", "least", "most", "limit", "why")) {
            p.at().down("sets")
                    .get(key)
                    .ifPresent(t -> problems.stop(
                            t, key + " beside as", "\"" + key + ":\" at " + as + " only", "delete it here"));
        }
    }

    private void mould(Placed<Mould> m) {
        List<Part> users = d.whole().parts().stream()
                .filter(p -> p.mould().filter(m.id()::equals).isPresent())
                .toList();
        boolean pieces = users.stream().allMatch(p -> p.sets().isPresent());
        if (!pieces || users.stream().map(Division::leader).distinct().count() > 1) {
            problems.stop(
                    m.at().down("for-each-piece"),
                    "a mould for each piece that "
                            + users.stream().map(Part::id).toList() + " take",
                    "parts that are made in the same sets",
                    "");
        }
    }

    private void opposite(Placed<Part> p, AfterOpposite o) {
        if (p.value().opposite().isEmpty()) {
            problems.stop(
                    p.at().down("after-opposite"), "no opposite", "\"opposite:\" with the part of the other hand", "");
        }
        boolean both = d.whole().parts().find(p.value().opposite().orElse("")).stream()
                .anyMatch(x -> x.afterOpposite().isPresent());
        if (both) {
            problems.stop(
                    p.at().down("after-opposite"),
                    "the same key at " + p.value().opposite().orElse(""),
                    "one of both hands to be the first",
                    "delete it at the hand that is made first");
        }
        if (o.lessonsOf().isPresent() == o.lessonsBefore().isEmpty()) {
            problems.stop(
                    p.at().down("after-opposite"),
                    "only one of lessons-of and lessons-before",
                    "both: whose lessons, and which steps wait for them",
                    "");
        }
        if (o.lessonsOf().isEmpty() && !o.follows()) {
            problems.stop(
                    p.at().down("after-opposite"),
                    "nothing that is asked for",
                    "lessons-of with lessons-before, or crew, or within",
                    "");
        }
    }
}
