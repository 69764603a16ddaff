package fayline.app.usecase.traveller;

import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * When something happened, and when it was entered.
 *
 * @param at when it happened, on a whole minute; empty for now
 * @param entered when it was entered, on a whole minute; empty for now
 */
public record BenchTime(Optional<Instant> at, Optional<Instant> entered) {
    /** What is entered later than this says so. Common practice, no source. */
    private static final Duration LATE = Duration.ofMinutes(10);

    /** Something entered as it happens. */
    public static final BenchTime NOW = new BenchTime(Optional.empty(), Optional.empty());

    /** Something that happened at a time; empty for now. */
    public static BenchTime of(Optional<Instant> at) {
        return new BenchTime(at, Optional.empty());
    }

    /**
     * The field {@code told} of an entry: when it was entered, where that lies so late after the happening that it must be said; empty
     * otherwise. What was sent before says the same again.
     */
    public String toldOf(ShopRecord shop, Sent sent, Instant happened) {
        Optional<String> before = shop.seqOf(sent.client())
                .flatMap(shop::entry)
                .map(e -> e.fields().text("told"));
        if (before.isPresent()) {
            return before.get();
        }
        Optional<Instant> when = sent.live() ? Optional.of(entered.orElse(shop.minute())) : entered;
        return when.filter(e -> Duration.between(happened, e).compareTo(LATE) > 0)
                .map(Instant::toString)
                .orElse("");
    }
}
