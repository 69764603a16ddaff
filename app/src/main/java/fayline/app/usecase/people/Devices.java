package fayline.app.usecase.people;

import fayline.flow.record.EntryKind;
import fayline.store.sql.PeopleTables;
import fayline.store.sql.PeopleTables.KnownDevice;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Phones, tablets and desk machines that are known: one's own, or shared by several who switch by PIN. */
public final class Devices {
    private static final int LONGEST_LABEL = 60;
    private final PeopleTables tables;
    private final Secrets secrets;
    private final Notices notices;
    private final Clock clock;

    Devices(PeopleTables tables, Secrets secrets, Notices notices, Clock clock) {
        this.tables = tables;
        this.secrets = secrets;
        this.notices = notices;
        this.clock = clock;
    }

    /**
     * A known device.
     *
     * @param id the id
     * @param label what the lead calls it
     * @param person whose it is; empty where several share it
     * @param paired since when it is known
     */
    public record Device(String id, String label, String person, Instant paired) {
        /** Whether several share it. */
        public boolean isShared() {
            return person.isEmpty();
        }
    }

    private static Device device(KnownDevice d) {
        return new Device(d.id(), d.label(), d.person(), d.paired());
    }

    /**
     * A device that was just paired.
     *
     * @param device what is kept of it
     * @param token what it holds from now on
     */
    public record Paired(Device device, String token) {}

    static String label(String typed) {
        String label = typed.strip();
        if (label.isEmpty() || label.length() > LONGEST_LABEL) {
            throw DeniedException.of("What is the device called? At most " + LONGEST_LABEL + " characters.");
        }
        return label;
    }

    Paired pair(Grant.Pairing grant) {
        String id = UUID.randomUUID().toString();
        String sort = grant.isShared() ? "shared" : "own";
        notices.tell(
                EntryKind.DEVICE_PAIRED,
                grant.by(),
                "device",
                id,
                "label",
                grant.label(),
                "sort",
                sort,
                "person",
                grant.person());
        String token = secrets.token();
        KnownDevice device =
                new KnownDevice(id, grant.label(), sort, grant.person(), Secrets.fingerprint(token), clock.instant());
        tables.add(device);
        return new Paired(device(device), token);
    }

    /** The device that holds a token; none where it was never paired or has been ended. */
    public Optional<Device> of(String token) {
        return tables.deviceOf(Secrets.fingerprint(token)).map(Devices::device);
    }

    /** Every known device, the oldest first. */
    public List<Device> all() {
        return tables.devices().stream().map(Devices::device).toList();
    }

    /**
     * Ends a device with the sign-ins on it.
     *
     * @param by whose it is, or who says who may enter
     * @param id the device
     */
    public void end(Actor by, String id) {
        KnownDevice d = tables.devices().stream()
                .filter(one -> one.id().equals(id))
                .filter(one -> one.person().equals(by.person()) || by.may(Act.KEEP_PEOPLE))
                .findFirst()
                .orElseThrow(() -> DeniedException.of("There is no such device; it may have been ended meanwhile."));
        tables.removeDevice(id);
        notices.tellDone(EntryKind.DEVICE_ENDED, by.person(), "device", id, "label", d.label(), "why", "ended");
    }
}
