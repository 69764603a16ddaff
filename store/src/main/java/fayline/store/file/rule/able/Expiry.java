package fayline.store.file.rule.able;

import fayline.flow.project.stock.Lot;
import fayline.store.file.rule.Draft;
import fayline.store.file.rule.Placed;
import fayline.store.file.yaml.Problems;
import java.time.LocalDate;

/** Lots past their date, or open for longer than they keep. */
final class Expiry {
    private static final String DECIDE = "take it out, or use it only by a recorded decision on a test piece";
    private final Draft d;
    private final LocalDate today;
    private final Problems problems;

    Expiry(Draft draft, LocalDate today, Problems problems) {
        this.d = draft;
        this.today = today;
        this.problems = problems;
    }

    void check() {
        for (Placed<Lot> p : d.lots()) {
            if (!p.sound()) {
                continue;
            }
            Lot lot = p.value();
            lot.expires()
                    .filter(x -> x.isBefore(today))
                    .ifPresent(x -> problems.stop(
                            p.at().down("expires"),
                            "lot " + lot.id() + " expired on " + x,
                            "a lot in date on " + today,
                            DECIDE));
            if (lot.opened().isPresent() && lot.openedLife().isPresent()) {
                LocalDate end = lot.opened().get().plusDays((long)
                        Math.floor(lot.openedLife().get().days()));
                if (end.isBefore(today)) {
                    problems.stop(
                            p.at().down("opened-life"),
                            "lot " + lot.id() + " kept until " + end + " once opened",
                            "a lot in date on " + today,
                            DECIDE);
                }
            }
            boolean mixed = d.whole().systems().find(lot.of()).isPresent();
            if (lot.expires().isEmpty() && mixed) {
                problems.caution(
                        p.at(),
                        "no date on lot " + lot.id(),
                        "\"expires:\" on every lot of a system",
                        "read the date on the can");
            }
        }
    }
}
