package fayline.flow.result.stock;

import fayline.basis.units.TimeSpan;
import fayline.flow.record.stock.LotMove;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How long a lot has been out of the cold. It counts as in the cold until it is carried out: what is kept there is put there as it comes.
 * The time left runs while it lies in the room and stands still in the cold; what was spent is never given back.
 *
 * @param limit how long it may be out, all together, as its data sheet says
 * @param spent how long it has been out
 * @param inRoom whether it lies in the room now
 * @param ends when the time is used up if it stays where it is; empty while it lies in the cold with time left
 */
public record OutOfCold(TimeSpan limit, TimeSpan spent, boolean inRoom, Optional<Instant> ends) {
    /**
     * Adds up moves.
     *
     * @param lot the lot
     * @param limit how long it may be out
     * @param moves what was carried where, in any order
     * @param now the moment; nothing after it counts
     */
    public static OutOfCold of(String lot, TimeSpan limit, List<LotMove> moves, Instant now) {
        List<LotMove> own = moves.stream()
                .filter(m -> m.lot().equals(lot) && !m.at().isAfter(now))
                .sorted(Comparator.comparing(LotMove::at).thenComparingLong(LotMove::seq))
                .toList();
        long most = Math.round(limit.minutes() * 60);
        long spent = 0;
        Optional<Instant> since = Optional.empty();
        Optional<Instant> ends = Optional.empty();
        for (LotMove m : own) {
            if (!m.cold() && since.isEmpty()) {
                since = Optional.of(m.at());
            } else if (m.cold() && since.isPresent()) {
                Instant out = since.get();
                long left = most - spent;
                long lay = Duration.between(out, m.at()).toSeconds();
                ends = ends.isPresent() || lay < left ? ends : Optional.of(out.plusSeconds(Math.max(0, left)));
                spent += lay;
                since = Optional.empty();
            }
        }
        if (since.isPresent()) {
            ends = ends.isPresent() ? ends : Optional.of(since.get().plusSeconds(Math.max(0, most - spent)));
            spent += Duration.between(since.get(), now).toSeconds();
        }
        return new OutOfCold(limit, TimeSpan.ofMinutes(spent / 60.0), since.isPresent(), ends);
    }

    /** Whether its time is used up at a moment. */
    public boolean isSpent(Instant at) {
        return ends.filter(e -> !e.isAfter(at)).isPresent();
    }
}
