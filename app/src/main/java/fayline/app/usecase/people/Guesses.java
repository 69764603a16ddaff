package fayline.app.usecase.people;

import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import io.github.bucket4j.TimeMeter;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * Slows guessing. Tries are counted where they come from, a network address or a known device, and not by the name that was
 * tried, so that nobody can lock another out by typing that name elsewhere. After some wrong tries from one place no further
 * one is heard for a minute, then two, up to a quarter of an hour; a right one starts anew.
 */
public final class Guesses {
    /** Wrong tries from one place before it must wait. */
    public static final int WRONG_BEFORE_WAIT = 5;

    /** The first wait; each further one is twice as long. */
    public static final Duration FIRST_WAIT = Duration.ofMinutes(1);

    /** The longest wait. */
    public static final Duration LONGEST_WAIT = Duration.ofMinutes(15);

    /** Tries a minute from one place, right or wrong. */
    public static final int TRIES_A_MINUTE = 10;

    /** Tries a minute from all places together. */
    public static final int ALL_TRIES_A_MINUTE = 120;

    private static final int MOST_PLACES = 10_000;
    private final Map<String, Place> places = new LinkedHashMap<>();
    private final Clock clock;
    private final TimeMeter meter;
    private final int aPlace;
    private final Bucket all;

    Guesses(Clock clock) {
        this(clock, TRIES_A_MINUTE, ALL_TRIES_A_MINUTE);
    }

    /**
     * With limits of its own.
     *
     * @param aPlace how many a minute from one place
     * @param fromAll how many a minute from all places together
     */
    Guesses(Clock clock, int aPlace, int fromAll) {
        this.clock = clock;
        this.meter = new ByClock(clock);
        this.aPlace = aPlace;
        this.all = bucket(fromAll);
    }

    private record ByClock(Clock clock) implements TimeMeter {
        @Override
        public long currentTimeNanos() {
            return TimeUnit.MILLISECONDS.toNanos(clock.millis());
        }

        @Override
        public boolean isWallClockBased() {
            return true;
        }
    }

    private static final class Place {
        private final Bucket tries;
        private int wrong;
        private int sinceRight;
        private Duration wait = FIRST_WAIT;
        private Instant until = Instant.MIN;

        Place(Bucket tries) {
            this.tries = tries;
        }
    }

    private Bucket bucket(int aMinute) {
        return Bucket.builder()
                .addLimit(b -> b.capacity(aMinute).refillGreedy(aMinute, Duration.ofMinutes(1)))
                .withCustomTimePrecision(meter)
                .build();
    }

    private Place place(String from) {
        Place known = places.get(from);
        if (known == null) {
            if (places.size() >= MOST_PLACES) {
                places.remove(places.keySet().iterator().next());
            }
            known = new Place(bucket(aPlace));
            places.put(from, known);
        }
        return known;
    }

    /**
     * Refuses a try that comes too soon.
     *
     * @param from where it comes from
     */
    synchronized void require(String from) {
        Place place = place(from);
        Instant now = clock.instant();
        if (now.isBefore(place.until)) {
            long wait = Math.min(Duration.between(now, place.until).toSeconds() + 1, LONGEST_WAIT.toSeconds());
            throw DeniedException.later(
                    "There were too many wrong tries from here. Wait " + wait + " s and try again.", wait);
        }
        ConsumptionProbe own = place.tries.tryConsumeAndReturnRemaining(1);
        ConsumptionProbe shared = own.isConsumed() ? all.tryConsumeAndReturnRemaining(1) : own;
        if (!shared.isConsumed()) {
            long wait = TimeUnit.NANOSECONDS.toSeconds(shared.getNanosToWaitForRefill()) + 1;
            throw DeniedException.later("Tries come too fast. Wait " + wait + " s and try again.", wait);
        }
    }

    /**
     * Counts a wrong try.
     *
     * @return where a wait begins with it, until when, and how many wrong tries there were since the last right one
     */
    synchronized Optional<Barred> wrong(String from) {
        Place place = place(from);
        place.wrong++;
        place.sinceRight++;
        if (place.wrong < WRONG_BEFORE_WAIT) {
            return Optional.empty();
        }
        place.wrong = 0;
        place.until = clock.instant().plus(place.wait);
        Duration longer = place.wait.multipliedBy(2);
        place.wait = longer.compareTo(LONGEST_WAIT) > 0 ? LONGEST_WAIT : longer;
        return Optional.of(new Barred(place.until, place.sinceRight));
    }

    /** Takes note of a right try: how many wrong ones went before it. */
    synchronized int right(String from) {
        Place known = places.remove(from);
        return known == null ? 0 : known.sinceRight;
    }

    record Barred(Instant until, int tries) {}
}
