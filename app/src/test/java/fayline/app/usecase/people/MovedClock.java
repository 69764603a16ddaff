package fayline.app.usecase.people;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that stands until it is moved. */
public final class MovedClock extends Clock {
    private volatile Instant now = Instant.parse("2026-03-03T12:00:00Z");

    /** Moves it. */
    public void by(Duration span) {
        now = now.plus(span);
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return this;
    }

    @Override
    public Instant instant() {
        return now;
    }
}
