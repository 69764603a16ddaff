package fayline.app.web.card;

import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.traveller.StepAsks;
import fayline.app.web.frame.PhotoView;
import fayline.app.web.frame.Sight;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.RecordState;
import fayline.flow.record.StepRecord;
import fayline.flow.record.TakenReading;
import fayline.flow.record.made.StepMade;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What is recorded of a step, as lines that can be corrected. */
final class CardRecord {
    private CardRecord() {}

    /** What went into the step; a wrong one is taken back and entered anew. */
    private static List<CardView.Recorded> made(Sight sight, RecordState state, String step) {
        StepMade made = state.made().step(step);
        List<CardView.Recorded> all = new ArrayList<>();
        made.plies()
                .forEach(p -> all.add(CardView.Recorded.plain(
                        p.seq(),
                        "Ply " + p.ply() + (p.skipped() ? " left out" : " laid") + by(sight, p.at(), p.by()),
                        "ply",
                        "")));
        made.mixes()
                .forEach(m -> all.add(CardView.Recorded.plain(
                        m.seq(),
                        "Cup " + m.batch() + " of " + StepAsks.materialName(sight.definition(), m.system())
                                + by(sight, m.at(), m.by()),
                        "mix",
                        "")));
        made.draws()
                .forEach(d -> all.add(CardView.Recorded.plain(
                        d.seq(), "Lot " + d.lot() + " drawn" + by(sight, d.at(), d.by()), "lot", "")));
        return all;
    }

    private static String by(Sight sight, Instant at, String by) {
        return ", " + sight.time().at(at) + ", " + sight.personName(by);
    }

    /** What two people recorded of one step, in sentences for both. */
    static List<String> twice(Sight sight, ShopRecord shop, String step) {
        return shop.state().conflicts().stream()
                .filter(c -> c.about().equals(step) && c.other() > 0)
                .map(
                        c -> told(sight, shop, c.other()) + " holds. " + told(sight, shop, c.seq())
                                + " stands beside it without effect. Settle between you which is right, and take the other back.")
                .toList();
    }

    private static String told(Sight sight, ShopRecord shop, long seq) {
        Entry entry = shop.entry(seq).orElseThrow();
        String deed = entry.kind().equals(EntryKind.STEP_STARTED.key()) ? "start" : "finish";
        return "The " + deed + " that " + sight.personName(entry.by()) + " recorded, "
                + sight.time().at(Instant.parse(entry.fields().text("at"))) + " (entry " + seq + ")";
    }

    static List<CardView.Recorded> of(Sight sight, RecordState state, String step) {
        StepRecord kept = state.step(step);
        List<CardView.Recorded> all = new ArrayList<>();
        kept.started()
                .ifPresent(t -> all.add(CardView.Recorded.plain(
                        kept.startedBy(),
                        "Started " + sight.time().at(t) + " by " + sight.personNames(kept.people())
                                + (kept.whichWay().isEmpty() ? "" : ". Which way round: " + kept.whichWay()),
                        "start",
                        "")));
        kept.finished()
                .ifPresent(t -> all.add(CardView.Recorded.plain(
                        kept.finishedBy(),
                        "Finished " + sight.time().at(t)
                                + (kept.signed().isEmpty() ? "" : ", signed by " + sight.personName(kept.signed()))
                                + kept.slip()
                                        .map(s -> ". Longer or later than planned: " + s.words())
                                        .orElse("")
                                + kept.missing().stream()
                                        .map(l -> ". Missing: " + l.what()
                                                + (l.why().isEmpty() ? "" : " (" + l.why() + ")"))
                                        .collect(Collectors.joining()),
                        "finish",
                        "")));
        for (StepRecord.Note n : kept.notes()) {
            String begins = "Note, " + sight.time().at(n.at()) + ", " + sight.personName(n.by());
            if (n.erased().isPresent()) {
                all.add(CardView.Recorded.plain(
                        n.seq(), begins + ": " + n.shown(sight.time().zone()), "erased", ""));
                continue;
            }
            all.add(new CardView.Recorded(
                    n.seq(),
                    n.text().isEmpty() ? begins : begins + ": " + n.text(),
                    "note",
                    n.text(),
                    PhotoView.of(n, begins)));
        }
        all.addAll(made(sight, state, step));
        String project = step.substring(0, step.indexOf('/'));
        String local = step.substring(project.length() + 1);
        String made = local.substring(0, local.indexOf('/'));
        for (TakenReading r : state.readings(project)) {
            boolean own = r.of().equals(local) || r.of().equals(step);
            boolean weighing = r.of().equals(made)
                    && sight.step(step)
                            .filter(s -> s.kind() == fayline.flow.project.recipe.StepKind.WEIGH)
                            .isPresent();
            if (own || weighing) {
                all.add(CardView.Recorded.plain(
                        r.seq(),
                        "Reading, " + sight.time().at(r.at()) + ", " + sight.personName(r.by()) + ": " + r.kind() + " "
                                + r.value(),
                        "reading",
                        r.value()));
            }
        }
        return all;
    }
}
