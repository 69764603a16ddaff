package fayline.app.usecase.shop;

import fayline.flow.record.RecordState;
import fayline.flow.record.change.Change;
import fayline.flow.record.change.Verdict;
import fayline.flow.result.state.ShopState;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;

/** What follows from changes of the design for the work: what waits until its new revision is in. */
public final class Changes {
    private Changes() {}

    /** What a project waits for at a moment: each part and joint that is made otherwise and whose definition is not yet so. */
    public static List<ShopState.Waiting> waiting(RecordState record, String project, Instant now) {
        return record.change().ofProject(project).stream()
                .flatMap(c -> waiting(c, now))
                .toList();
    }

    private static Stream<ShopState.Waiting> waiting(Change c, Instant now) {
        return c.verdict().filter(v -> !v.at().isAfter(now)).stream()
                .flatMap(v -> v.withdraws().stream())
                .map(Verdict.Withdrawn::made)
                .filter(c::awaitsDefinitionOf)
                .map(made -> new ShopState.Waiting(
                        "change-" + c.seq() + "-" + made,
                        "the new revision of " + made + " under change " + c.name(),
                        made));
    }
}
