package fayline.app.web.design;

import fayline.app.web.frame.Sight;
import fayline.flow.plan.PieceGroup;
import fayline.flow.plan.PieceGroup.PieceSet;
import fayline.flow.plan.Work;
import fayline.flow.project.design.AfterOpposite;
import fayline.flow.project.design.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Why a part is a set of so many pieces, and what it asks of its opposite hand, in words. */
final class SetWords {
    private SetWords() {}

    /** How many go into a set and why, and what else the plan might do; empty for what is no set. */
    static Optional<String> of(Sight sight, Part part) {
        return part.pieces()
                .flatMap(p -> group(sight.work(), group(sight, p.of())))
                .map(g -> words(sight.work(), g));
    }

    private static String words(Work work, PieceGroup g) {
        List<String> others = new ArrayList<>();
        for (Work other : work.sets().otherwise()) {
            group(other, g.id())
                    .map(SetWords::sizes)
                    .filter(s -> !s.equals(sizes(g)) && !others.contains(s))
                    .ifPresent(others::add);
        }
        return p(g.least(), g.most()) + " in a set" + (g.why().isEmpty() ? "." : ": " + g.why()) + " Planned "
                + sizes(g)
                + (others.isEmpty() ? "" : "; " + String.join(" or ", others) + " was thought of too") + ".";
    }

    private static String group(Sight sight, Part stated) {
        return sight.definition().facts().id() + "/" + stated.id();
    }

    private static Optional<PieceGroup> group(Work work, String id) {
        return work.sets().groups().stream().filter(g -> g.id().equals(id)).findFirst();
    }

    private static String p(int least, int most) {
        return least == most ? String.valueOf(most) : least + " to " + most;
    }

    /** Sizes in the order of the pieces, as {@code 6, 6 and 3}. */
    private static String sizes(PieceGroup g) {
        List<String> all = g.sets().stream()
                .map(PieceSet::size)
                .map(String::valueOf)
                .collect(Collectors.toCollection(ArrayList::new));
        if (all.size() < 2) {
            return String.join("", all) + " in one";
        }
        String last = all.remove(all.size() - 1);
        return String.join(", ", all) + " and " + last;
    }

    /** What a part takes over from its opposite hand; empty where it asks for nothing. */
    static Optional<String> afterOpposite(Sight sight, Part part) {
        return part.afterOpposite().map(a -> {
            List<String> words = new ArrayList<>();
            a.lessonsOf()
                    .ifPresent(of -> words.add(
                            kinds(a.lessonsBefore().stream().map(k -> k.key()).toList()) + " waits for the lessons of "
                                    + sight.madeName(of.split("/", -1)[0])));
            String steps = a.steps().isEmpty()
                    ? "every step"
                    : kinds(a.steps().stream().map(k -> k.key()).toList());
            if (a.crew() != AfterOpposite.Crew.ANY) {
                words.add(steps + " by "
                        + (a.crew() == AfterOpposite.Crew.SAME ? "the people" : "one of the people")
                        + " who did it on the first hand");
            }
            a.within()
                    .ifPresent(
                            w -> words.add(steps + " within " + sight.format().span(w) + " of the first hand's"));
            return String.join("; ", words) + ".";
        });
    }

    private static String kinds(List<String> keys) {
        return keys.stream().map(k -> k.replace('-', ' ')).collect(Collectors.joining(" and "));
    }
}
