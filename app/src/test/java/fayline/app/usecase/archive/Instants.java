package fayline.app.usecase.archive;

import java.time.Instant;

/** Moments of these tests. */
final class Instants {
    static final Instant NOW = Instant.parse("2026-03-03T06:00:00Z");

    private Instants() {}
}
