package fayline.app.usecase.open;

import fayline.flow.record.Chain;
import fayline.flow.record.Head;
import fayline.store.sql.RecordCheck;
import fayline.store.sql.StoreException;
import java.nio.file.Path;
import java.util.Optional;

/** Checks the chain of a data folder, open in a program or not; writes nothing. */
public final class VerifyRecord {
    private VerifyRecord() {}

    /**
     * What was found.
     *
     * @param head the head up to which the chain is sound, as it can be written down
     * @param entries how many entries are sound
     * @param fault the first bad entry in a sentence, where there is one
     */
    public record Report(String head, long entries, Optional<String> fault) {}

    /**
     * Checks.
     *
     * @param data the data folder
     * @param outside a head that was kept elsewhere, where there is one
     * @throws CannotOpenException if there is no record or it is out of reach
     */
    public static Report verify(Path data, Optional<Head> outside) {
        try {
            RecordCheck.Report report = RecordCheck.check(data, outside);
            return new Report(
                    report.head().toString(),
                    report.head().seq(),
                    report.fault().map(Chain.Fault::sentence));
        } catch (StoreException e) {
            throw new CannotOpenException(String.valueOf(e.getMessage()), false, e);
        }
    }
}
