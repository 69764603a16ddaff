package fayline.app.usecase.people;

import java.time.Duration;
import java.util.Locale;

/** How somebody signed in, and how long that holds. */
public enum Way {
    /** By a password, in any browser. */
    PASSWORD(Duration.ofHours(8), Duration.ofDays(3)),
    /** By a device of one's own that was paired. */
    DEVICE(Duration.ofDays(30), Duration.ofDays(180)),
    /** By a PIN on a device that several share. */
    PIN(Duration.ofMinutes(15), Duration.ofHours(12));

    private final Duration idle;
    private final Duration age;

    Way(Duration idle, Duration age) {
        this.idle = idle;
        this.age = age;
    }

    /** After how long without a request it ends. */
    public Duration idle() {
        return idle;
    }

    /** After how long it ends whatever happens. */
    public Duration age() {
        return age;
    }

    /** The word in the record and in the database. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Way ofKey(String key) {
        return valueOf(key.toUpperCase(Locale.ROOT));
    }
}
