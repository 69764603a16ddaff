package fayline.app.web.fit;

import fayline.app.usecase.act.Doubts;
import fayline.app.usecase.fit.FitSight;
import fayline.app.usecase.fit.LookAtFits;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Visit;
import fayline.basis.units.Length;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitStation;
import fayline.flow.reading.FitReading;
import fayline.flow.result.fit.FitResult;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Which station is asked for next: one that was just read oddly again on the spot, then those not read, then others that read
 * oddly; of a curved part then the flush; at the end the answer.
 */
final class FitAsking {
    private static final int ENOUGH = 3;

    private final Sight sight;
    private final Fit fit;
    private final FitSetup setup;
    private final Optional<FitResult> result;
    private final List<FitReading> all;
    private final List<FitReading> mine;
    private final Map<String, List<String>> odd = new LinkedHashMap<>();

    private FitAsking(Sight sight, Fit fit, FitSetup setup, Optional<FitResult> result, List<FitReading> all) {
        this.sight = sight;
        this.fit = fit;
        this.setup = setup;
        this.result = result;
        this.all = all;
        this.mine = all.stream().filter(setup::holds).toList();
        result.ifPresent(this::suspect);
        mine.forEach(r -> Doubts.ofFit(fit, setup.kind() == FitReading.Kind.FLUSH, Length.ofMillimetres(r.valueMm()))
                .ifPresent(q -> odd.merge(r.station(), List.of(r.typed() + ": " + q), FitAsking::both)));
    }

    private static List<String> both(List<String> a, List<String> b) {
        return Stream.concat(a.stream(), b.stream()).toList();
    }

    static FitAsking of(Sight sight, Fit fit, List<FitReading> all, FitSetup setup) {
        return new FitAsking(
                sight, fit, setup, LookAtFits.of(sight.view(), fit.id(), false).map(FitSight::result), all);
    }

    private void suspect(FitResult r) {
        r.states().stream()
                .filter(s -> s.state().id().equals(setup.state()))
                .flatMap(s -> s.stations().stream())
                .forEach(v -> {
                    List<String> again = v.suspects().stream()
                            .filter(s -> s.flush() == (setup.kind() == FitReading.Kind.FLUSH))
                            .map(s -> sight.say(s.sentence()))
                            .toList();
                    if (!again.isEmpty()) {
                        odd.put(v.station().id(), again);
                    }
                });
    }

    /** What follows from the readings so far. */
    Optional<FitResult> result() {
        return result;
    }

    /** The readings under this choice. */
    List<FitReading> mine() {
        return mine;
    }

    /** Why each station in this state should be read again, by its mark. */
    Map<String, List<String>> odd() {
        return odd;
    }

    /** Why a station is asked for again before going on; empty where it is not: read twice, or kept as it is. */
    List<String> again(String station) {
        boolean once = mine.stream().filter(r -> r.station().equals(station)).count() == 1;
        return once && !setup.passed().contains(station) ? odd.getOrDefault(station, List.of()) : List.of();
    }

    /** The address of what comes after a station was read. */
    String after(String station) {
        return again(station).isEmpty() ? beyond(station) : setup.link(fit.id(), station);
    }

    /** The address of what comes when a station is passed over, unread or as it is. */
    String passing(String station) {
        FitSetup passed = setup.passing(station);
        FitAsking then = new FitAsking(sight, fit, passed, result, all);
        return then.beyond(station);
    }

    private String beyond(String station) {
        List<String> marks = fit.stations().stream().map(FitStation::id).toList();
        int here = marks.indexOf(station);
        List<String> round = new ArrayList<>(marks.subList(here + 1, marks.size()));
        round.addAll(marks.subList(0, here + 1));
        return round.stream()
                .filter(m -> !isRead(m) && !setup.passed().contains(m))
                .findFirst()
                .or(() -> round.stream().filter(m -> !again(m).isEmpty()).findFirst())
                .map(m -> setup.link(fit.id(), m))
                .orElseGet(this::end);
    }

    private boolean isRead(String mark) {
        return mine.stream().anyMatch(r -> r.station().equals(mark));
    }

    private boolean isCurved() {
        return result.filter(FitResult::curved).isPresent();
    }

    /** The flush of a curved part, which is read after these gaps; empty where it is begun, or not asked for. */
    Optional<FitSetup> flushNext() {
        FitSetup flush = setup.reading(FitReading.Kind.FLUSH);
        return isCurved() && setup.kind().tellsGap() && all.stream().noneMatch(flush::holds)
                ? Optional.of(flush)
                : Optional.empty();
    }

    /** The answer where these readings make one, of a curved part once its flush is read as well; else the list of what was read. */
    private String end() {
        boolean curved = isCurved();
        Optional<FitSetup> flush = flushNext();
        if (flush.isPresent()) {
            return flush.get().link(fit.id(), fit.stations().get(0).id());
        }
        boolean answers = (curved || setup.kind().tellsGap())
                && result.flatMap(FitResult::advice)
                        .filter(a -> a.state().equals(setup.state()) && a.rows().size() >= ENOUGH)
                        .isPresent();
        return answers ? "/fit/" + Visit.encoded(fit.id()) : setup.link(fit.id(), "");
    }
}
