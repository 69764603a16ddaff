package fayline.store.file.rule;

import fayline.flow.project.chain.ChainLink;
import fayline.flow.project.chain.ChainRemedy;
import fayline.flow.project.chain.FitChain;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitStation;
import fayline.store.file.yaml.Nearest;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** What a chain says of its links and its end must go together. */
final class ChainRules {
    private final Draft draft;
    private final Placed<FitChain> placed;
    private final FitChain chain;
    private final Problems problems;

    ChainRules(Draft draft, Placed<FitChain> placed, Problems problems) {
        this.draft = draft;
        this.placed = placed;
        this.chain = placed.value();
        this.problems = problems;
    }

    void check() {
        if (!placed.sound()) {
            return;
        }
        List<Tree> links = placed.at().down("links").items();
        for (int k = 0; k < links.size(); k++) {
            follows(links, k);
            scheme(links.get(k), chain.links().get(k));
            marks(links.get(k), chain.links().get(k));
        }
        fit(chain.endsAt()).ifPresent(this::end);
        List<Tree> remedies = placed.at().down("remedies").items();
        for (int k = 0; k < remedies.size(); k++) {
            remedy(remedies.get(k), chain.remedies().get(k));
        }
    }

    private Optional<Fit> fit(String id) {
        return draft.whole().fits().find(id);
    }

    private void follows(List<Tree> links, int k) {
        ChainLink link = chain.links().get(k);
        if (k + 1 < links.size()
                && !link.carrier().equals(chain.links().get(k + 1).part())) {
            problems.stop(
                    links.get(k + 1).down("part"),
                    Problems.quote(chain.links().get(k + 1).part()),
                    Problems.quote(link.carrier()) + ", on which the link before ends",
                    "");
        }
        if (parts().subList(0, k + 1).contains(link.carrier())) {
            problems.stop(
                    links.get(k).down("carrier"),
                    Problems.quote(link.carrier()),
                    "something further out: a chain does not come back to its own parts",
                    "");
        }
    }

    private List<String> parts() {
        return chain.links().stream().map(ChainLink::part).toList();
    }

    private void scheme(Tree at, ChainLink link) {
        SchemeRules.check(at, "link", problems);
        for (Tree p : at.down("points").items()) {
            if (p.get("normal").isEmpty()) {
                problems.stopAtKey(p, "normal", "a point without a direction", "\"normal:\" from part to carrier", "");
            }
        }
        if (link.schemeOf().isPresent() && fit(link.schemeOf().get()).isEmpty()) {
            return;
        }
        List<String> names =
                link.schemeOf().flatMap(this::fit).map(Fit::holding).orElse(link.holding()).schemes().stream()
                        .map(s -> s.name())
                        .toList();
        if (!names.contains(link.holding().chosen())) {
            among(
                    at.down("scheme"),
                    names,
                    link.schemeOf().isPresent()
                            ? "a scheme of " + link.schemeOf().get()
                            : "a scheme of this link");
        }
    }

    private void marks(Tree at, ChainLink link) {
        if (link.marks().isEmpty()) {
            return;
        }
        if (at.get("placement").isPresent()) {
            problems.stop(at.down("placement"), "a placement beside marks", "one of the two", "");
        }
        ChainLink.Mark first = link.marks().get(0);
        if (link.marks().stream().allMatch(m -> m.bench().distanceMm(first.bench()) < 1)) {
            problems.stop(at.down("marks"), "marks in one place", "two or more marks apart from each other", "");
        }
    }

    private void end(Fit end) {
        Tree at = placed.at().down("ends-at");
        int on = end.part().map(parts()::indexOf).orElse(0);
        if (on < 0) {
            problems.stop(
                    at,
                    "a fit of " + Problems.quote(end.part().orElse("")),
                    "a fit of a part of this chain: " + String.join(", ", parts()),
                    "");
            return;
        }
        List<String> inside = parts().subList(0, on + 1);
        List<String> against = new ArrayList<>(end.against());
        end.stations().stream().map(FitStation::against).forEach(against::add);
        against.stream()
                .filter(inside::contains)
                .findFirst()
                .ifPresent(a -> problems.stop(
                        at, "a gap against " + Problems.quote(a), "gaps with a link of the chain between", ""));
        List<String> free = end.against().stream()
                .filter(a -> !parts().contains(a)
                        && chain.links().stream().noneMatch(l -> l.carrier().equals(a)))
                .toList();
        placed.at().down("neighbours").items().forEach(n -> {
            if (!free.contains(n.down("name").text())) {
                among(n.down("name"), free, "a neighbour of " + end.id() + " that is no part of the chain");
            }
        });
    }

    private void remedy(Tree at, ChainRemedy remedy) {
        boolean hung = remedy.kind() == ChainRemedy.Kind.RE_HANG;
        if (!hung && at.get("limit").isEmpty()) {
            problems.stopAtKey(at, "limit", "no limit", "\"limit:\" with a length", "");
        }
        fit(chain.endsAt()).ifPresent(end -> {
            List<String> ids = end.stations().stream().map(FitStation::id).toList();
            at.down("at").items().stream()
                    .filter(t -> !ids.contains(t.text()))
                    .forEach(t -> among(t, ids, "a station of " + end.id()));
        });
    }

    private void among(Tree t, Collection<String> known, String what) {
        problems.stop(
                t,
                Problems.quote(t.text()),
                known.isEmpty() ? what + ", of which there is none" : what + ": " + String.join(", ", known),
                Nearest.suggest(t.text(), known));
    }
}
