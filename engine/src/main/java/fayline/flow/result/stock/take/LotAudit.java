package fayline.flow.result.stock.take;

import fayline.flow.record.made.Mix;
import fayline.method.mix.audit.RatioAuditResult;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What a stock-take says of the lots of a system that went into the same mixes.
 *
 * @param take the stock-take's entry
 * @param at when it was
 * @param system the system
 * @param resinLots lots of resin
 * @param hardenerLots lots of hardener
 * @param since the stock-take from which it is reckoned; empty where from what was received
 * @param uncounted lots of them that were not counted: then nothing can be told
 * @param result what the audit says; empty where a lot was not counted or there is none of a part
 * @param read mixes since with both scale readings
 * @param unread mixes since without
 * @param untold steps since that took this system and of which no mix was recorded, {@code project/made/make-number/key}
 * @param labels whether what was received is known by the label alone
 */
public record LotAudit(
        long take,
        Instant at,
        String system,
        List<String> resinLots,
        List<String> hardenerLots,
        Optional<Instant> since,
        List<String> uncounted,
        Optional<RatioAuditResult> result,
        List<Mix> read,
        List<Mix> unread,
        List<String> untold,
        boolean labels) {
    /** Copies the lists. */
    public LotAudit {
        resinLots = List.copyOf(resinLots);
        hardenerLots = List.copyOf(hardenerLots);
        uncounted = List.copyOf(uncounted);
        read = List.copyOf(read);
        unread = List.copyOf(unread);
        untold = List.copyOf(untold);
    }

    /** Whether the ratio was not kept. */
    public boolean failed() {
        return result.filter(r -> r.verdict() == RatioAuditResult.Verdict.FAIL).isPresent();
    }

    /** Mixes in doubt after a failure: those without readings; where each has one, all. */
    public List<Mix> suspectMixes() {
        if (!failed()) {
            return List.of();
        }
        return unread.isEmpty() && untold.isEmpty() ? read : unread;
    }

    /** Steps in doubt after a failure, each once: those of the mixes in doubt, and those of which no mix was recorded. */
    public List<String> suspectSteps() {
        if (!failed()) {
            return List.of();
        }
        return java.util.stream.Stream.concat(suspectMixes().stream().map(Mix::step), untold.stream())
                .distinct()
                .toList();
    }

    /** Parts and joints in doubt after a failure, {@code project/made}, each once. */
    public List<String> suspectParts() {
        return suspectSteps().stream().map(LotAudit::made).distinct().toList();
    }

    private static String made(String step) {
        String[] bits = step.split("/", -1);
        return bits[0] + "/" + bits[1];
    }
}
