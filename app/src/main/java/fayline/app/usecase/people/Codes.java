package fayline.app.usecase.people;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** One-time codes: random, short-lived, good for one use. Kept in memory as hashes; a restart ends them all. */
final class Codes {
    private static final Duration LIFE = Duration.ofMinutes(10);
    private static final Duration SET_UP_LIFE = Duration.ofHours(1);
    private static final int MOST = 50;
    private final Map<String, Kept> kept = new LinkedHashMap<>();
    private final Secrets secrets;
    private final Clock clock;

    Codes(Secrets secrets, Clock clock) {
        this.secrets = secrets;
        this.clock = clock;
    }

    private record Kept(Grant grant, Instant until) {}

    static Duration lifeOf(Grant grant) {
        return grant instanceof Grant.SetUp ? SET_UP_LIFE : LIFE;
    }

    synchronized String issue(Grant grant) {
        sweep();
        if (kept.size() >= MOST) {
            Iterator<String> oldest = kept.keySet().iterator();
            oldest.next();
            oldest.remove();
        }
        if (grant instanceof Grant.SetUp) {
            kept.values().removeIf(k -> k.grant() instanceof Grant.SetUp);
        }
        String code = secrets.code();
        kept.put(
                Secrets.fingerprint(Secrets.readCode(code)),
                new Kept(grant, clock.instant().plus(lifeOf(grant))));
        return code;
    }

    /** What a code allows; it is used up by asking. */
    synchronized Optional<Grant> use(String typed) {
        sweep();
        return Optional.ofNullable(kept.remove(Secrets.fingerprint(Secrets.readCode(typed))))
                .map(Kept::grant);
    }

    /** Ends the codes that were issued for somebody. */
    synchronized void endFor(String person) {
        kept.values().removeIf(k -> k.grant().isFor(person));
    }

    private void sweep() {
        Instant now = clock.instant();
        // a clock that was set back ends codes as one that ran out does
        kept.values()
                .removeIf(k -> !now.isBefore(k.until())
                        || now.isBefore(k.until().minus(SET_UP_LIFE).minus(LIFE)));
    }
}
