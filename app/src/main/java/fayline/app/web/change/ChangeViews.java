package fayline.app.web.change;

import fayline.app.usecase.change.FollowChange;
import fayline.app.usecase.change.Followed;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Visit;
import fayline.app.web.trouble.DeviationViews;
import fayline.flow.record.change.Change;
import fayline.flow.record.change.Treatment;
import fayline.flow.record.change.Verdict;
import fayline.flow.result.change.Reached;
import fayline.flow.result.change.Reached.Group;
import fayline.flow.result.change.Reached.Standing;
import fayline.flow.result.change.Touch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Makes what pages show of changes. */
public final class ChangeViews {
    private final Sight sight;

    /** Of the project that is seen. */
    public ChangeViews(Sight sight) {
        this.sight = sight;
    }

    /** The changes of the project, the open ones leading, each group newest first. */
    public List<ChangeView> all() {
        return mine().stream()
                .sorted(Comparator.comparing((Change c) -> !c.isOpen())
                        .thenComparing(Comparator.comparingLong(Change::seq).reversed()))
                .map(this::of)
                .toList();
    }

    private List<Change> mine() {
        return sight.view().record().change().ofProject(sight.view().project());
    }

    /** What is to be said of a part or joint about changes: each with its stage, and what is withdrawn. */
    public List<Mention> ofMade(String made) {
        List<Mention> all = new ArrayList<>();
        for (Change c : mine()) {
            boolean on = c.verdict().filter(v -> v.isOn(made)).isPresent()
                    || (c.isOpen() && reach(c).result().made().contains(made));
            if (on) {
                all.add(new Mention(
                        c.name() + ": " + c.what(), c.stage().words(), link(c.seq(), c.project()), withdrawn(c, made)));
            }
        }
        return all;
    }

    /**
     * A change in a line.
     *
     * @param name its name and what it alters
     * @param stage how far it is
     * @param link its page
     * @param withdrawn what may no longer be used because of it; empty for nothing
     */
    public record Mention(String name, String stage, String link, String withdrawn) {}

    private static String withdrawn(Change c, String made) {
        boolean stays = c.settled(Change.itemOf(made))
                .filter(s -> s.how() == Treatment.UNCHANGED)
                .isPresent();
        if (!c.isInForce() || stays) {
            return "";
        }
        return c.verdict().stream()
                .flatMap(v -> v.withdraws().stream())
                .filter(w -> w.made().equals(made))
                .map(w ->
                        (w.drawing().isEmpty() ? "What was printed of it before" : "What was printed to " + w.drawing())
                                + " is withdrawn by change " + c.name() + ". Do not use it.")
                .findFirst()
                .orElse("");
    }

    private Followed reach(Change c) {
        return FollowChange.of(
                sight.view().record(),
                sight.definition(),
                sight.result().steps(),
                sight.view().state(),
                c);
    }

    /** One. */
    public ChangeView of(Change c) {
        Followed f = reach(c);
        List<ChangeView.Group> groups = new ArrayList<>();
        for (Group g : Group.values()) {
            List<ChangeView.Line> lines = g.isSettled()
                    ? f.lines().stream()
                            .filter(l -> l.reached().group() == g)
                            .map(l -> line(l.reached(), l, c))
                            .toList()
                    : f.result().of(g).stream()
                            .map(r -> line(r, new Followed.Line(r, Optional.empty()), c))
                            .toList();
            if (!lines.isEmpty()) {
                groups.add(new ChangeView.Group(g.words(), g.key(), count(g, f, lines), g.isSettled(), lines));
            }
        }
        return new ChangeView(
                c.seq(),
                c.name(),
                c.what(),
                c.why(),
                "Raised " + sight.time().at(c.at()) + " by " + sight.personName(c.by()),
                new ChangeView.Stage(
                        c.stage().words(),
                        c.stage() == Change.Stage.RAISED,
                        c.stage() == Change.Stage.WAITS_FOR_SECOND,
                        c.stage() == Change.Stage.ACCEPTED),
                c.isOpen(),
                c.structural(),
                Touch.allOf(c.touches()).stream().map(this::name).toList(),
                said(c),
                groups,
                counts(f),
                f.disposals().stream().map(d -> disposal(c, d)).toList(),
                c.stage() == Change.Stage.ACCEPTED ? f.missing() : List.of());
    }

    private String name(Touch t) {
        String one = t.sort().key();
        return one.substring(0, 1).toUpperCase(Locale.ROOT) + one.substring(1) + " " + t.name(sight.definition());
    }

    private static String counts(Followed f) {
        long made = f.result().count(Group.MADE, Standing.MADE);
        long work = f.result().count(Group.MADE, Standing.IN_WORK);
        long not = f.result().count(Group.MADE, Standing.NOT_BEGUN);
        return made + " made, " + work + " in work, " + not + " not begun";
    }

    private static String count(Group g, Followed f, List<ChangeView.Line> lines) {
        if (g == Group.STEP) {
            return f.result().count(g, Standing.MADE) + " finished, "
                    + f.result().count(g, Standing.IN_WORK) + " at work, "
                    + f.result().count(g, Standing.NOT_BEGUN) + " not begun";
        }
        long settled = lines.stream().filter(l -> !l.open()).count();
        return f.change().stage() == Change.Stage.RAISED
                ? String.valueOf(lines.size())
                : settled + " of " + lines.size() + " settled";
    }

    private List<String> said(Change c) {
        List<String> said = new ArrayList<>();
        c.verdict().ifPresent(v -> verdict(said, v));
        c.closed()
                .ifPresent(x -> said.add(
                        "Closed " + sight.time().at(x.at()) + " by " + sight.personName(x.by()) + ". " + x.note()));
        return said;
    }

    private void verdict(List<String> said, Verdict v) {
        said.add((v.accepted() ? "Accepted " : "Refused ") + sight.time().at(v.at()) + " by " + sight.personName(v.by())
                + ". " + v.note());
        if (!v.second().isEmpty()) {
            said.add("Second person: " + sight.personName(v.second()) + ".");
        }
        v.withdraws().stream()
                .filter(w -> !w.drawing().isEmpty())
                .map(w -> sight.named(w.made()) + " was made to " + w.drawing() + ".")
                .forEach(said::add);
    }

    private ChangeView.Line line(Reached r, Followed.Line l, Change c) {
        String became = l.settled()
                .map(s -> s.how().words()
                        + (s.drawing().isEmpty() ? "" : ", " + s.drawing())
                        + (s.note().isEmpty() ? "" : ": " + s.note()) + " ("
                        + sight.time().at(s.at()) + ", "
                        + sight.personName(s.by()) + ")")
                .orElse("");
        return new ChangeView.Line(
                r.item(),
                sight.named(r.name()),
                link(r),
                String.join("; ", r.why()),
                r.standing().words(),
                sight.named(r.detail()),
                became,
                r.group().isSettled() && became.isEmpty() && c.verdict().isPresent());
    }

    private String link(Reached r) {
        String id = r.id().substring(r.id().lastIndexOf('/') + 1);
        return switch (r.group()) {
            case MADE, BESIDE, WEIGHT, CARD -> known(r.id());
            case STEP -> Sight.cardLink(sight.view().project() + "/" + r.id());
            case FIT -> (r.id().startsWith("chain/") ? "/chain/" : "/fit/") + Visit.encoded(id);
            case TEMPLATE -> "/fit/" + Visit.encoded(id);
            case ORDER -> sight.view().record().stock().order(id).isPresent() ? "/orders/" + id : "/orders";
            case MOULD -> "/shop";
            case CHECK -> check(r.id());
            case DESIGN -> r.id().startsWith("recipe/") ? "/recipes" : "/definition";
        };
    }

    private String check(String id) {
        String[] bits = id.split("/", -1);
        return bits[0].equals("stage") ? "/inspections" : bits.length > 1 ? known(bits[1]) : "";
    }

    private String known(String made) {
        return sight.made(made).isPresent() ? sight.madeLink(made) : "";
    }

    private ChangeView.Disposal disposal(Change c, Followed.Disposal d) {
        String decided = d.deviation()
                .flatMap(x -> x.settled())
                .map(s -> s.disposition().words() + (s.note().isEmpty() ? "" : ": " + s.note()))
                .orElse("");
        String says = d.open().isEmpty() ? decided : decided.isEmpty() ? d.open() : decided + "; " + d.open();
        return new ChangeView.Disposal(
                d.made(),
                sight.named(d.name()),
                says,
                d.deviation()
                        .map(x -> DeviationViews.link(x.seq(), c.project()))
                        .orElse(""),
                !d.open().isEmpty());
    }

    /** The address of a change's page. */
    public static String link(long seq, String project) {
        return "/change/" + seq + "?project=" + Visit.encoded(project);
    }
}
