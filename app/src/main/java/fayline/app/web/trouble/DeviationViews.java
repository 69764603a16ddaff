package fayline.app.web.trouble;

import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.shop.Troubles;
import fayline.app.web.frame.PhotoView;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Visit;
import fayline.flow.project.piece.ReworkSteps;
import fayline.flow.record.RecordState;
import fayline.flow.record.StepRecord;
import fayline.flow.record.trouble.Deviation;
import fayline.flow.record.trouble.Rework;
import fayline.flow.record.trouble.Settlement;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** Makes what pages show of deviations. */
public final class DeviationViews {
    private final Sight sight;
    private final ShopRecord shop;
    private final RecordState state;
    private final List<ReworkSteps.Piece> pieces;

    /** Of the project that is seen. */
    public DeviationViews(Sight sight, ShopRecord shop) {
        this.sight = sight;
        this.shop = shop;
        this.state = shop.state();
        this.pieces = Troubles.rework(
                state, sight.definition().facts().id(), sight.time().now());
    }

    /** Those of the project, the open ones leading, each group newest first. */
    public List<DeviationView> all() {
        List<Deviation> mine = new ArrayList<>(
                state.trouble().ofProject(sight.definition().facts().id()));
        java.util.Collections.reverse(mine);
        mine.sort(java.util.Comparator.comparing(d -> !d.isOpen()));
        return mine.stream().map(this::of).toList();
    }

    /** Those about one part or joint, or one of its steps. */
    public List<DeviationView> ofMade(String made) {
        return state.trouble().ofMade(sight.definition().facts().id() + "/" + made).stream()
                .map(this::of)
                .toList();
    }

    /** One. */
    public DeviationView of(Deviation d) {
        String[] bits = d.about().split("/", -1);
        String begins = "Deviation " + d.seq() + ", " + sight.time().at(d.at());
        String late = d.told()
                .map(t -> ", entered " + sight.time().span(Duration.between(d.at(), t)) + " later")
                .orElse("");
        return new DeviationView(
                d.seq(),
                d.isOfStep()
                        ? sight.stepName(d.about())
                        : sight.made(bits[bits.length - 1]).map(m -> m.name()).orElse(d.about()),
                d.isOfStep() ? Sight.cardLink(d.about()) : sight.madeLink(bits[bits.length - 1]),
                sight.time().at(d.at()) + ", " + sight.personName(d.by()) + late,
                d.text(),
                PhotoView.of(d.photos(), begins),
                d.structural(),
                word(d),
                d.isOpen(),
                d.isWaitingForSecond(),
                d.settled().map(this::decided).orElse(List.of()),
                d.settled().map(s -> work(d, s)).orElse(List.of()),
                !shop.isJudged());
    }

    private static String word(Deviation d) {
        return d.isWaitingForSecond()
                ? "waits for a second person"
                : d.settled().map(s -> s.disposition().words()).orElse("open");
    }

    private List<String> decided(Settlement s) {
        List<String> lines = new ArrayList<>();
        lines.add("Decided " + sight.time().at(s.at()) + " by " + sight.personName(s.by()) + ": "
                + s.disposition().words() + ".");
        if (!s.note().isEmpty()) {
            lines.add(s.note());
        }
        if (!s.second().isEmpty()) {
            lines.add("Second person: " + sight.personName(s.second()) + ".");
        }
        return lines;
    }

    private List<DeviationView.Work> work(Deviation d, Settlement s) {
        List<DeviationView.Work> all = new ArrayList<>();
        String project = d.project();
        for (Rework r : s.rework()) {
            String link = pieces.stream()
                    .filter(p -> p.what().equals(r.what()) && d.made().equals(project + "/" + p.made()))
                    .map(p -> project + "/" + p.local())
                    .findFirst()
                    .orElse("");
            StepRecord kept = state.step(link);
            String far = link.isEmpty()
                    ? ""
                    : kept.finished()
                            .map(f -> ", done " + sight.time().at(f))
                            .orElse(kept.started().isPresent() ? ", at work" : ", to do");
            all.add(new DeviationView.Work(
                    r.what() + ", " + r.time() + far, link.isEmpty() ? "" : Sight.cardLink(link)));
        }
        return all;
    }

    /** The address of a deviation's page. */
    public static String link(long seq, String project) {
        return "/deviation/" + seq + "?project=" + Visit.encoded(project);
    }
}
