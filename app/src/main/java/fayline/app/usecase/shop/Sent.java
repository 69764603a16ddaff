package fayline.app.usecase.shop;

import java.nio.charset.StandardCharsets;
import java.util.UUID;

/**
 * Who sends something, under which id.
 *
 * @param client the id, made by the sender: a random number of at least 16 hexadecimal digits and hyphens, as a UUID; sent
 *     twice it makes one entry. Events of a history file have {@code h-} and 40 digits taken from their content
 * @param by who did it: a person of the crew, as picked on the page
 * @param live whether it is done now at the bench; otherwise it is told afterwards, and what happened is not refused
 * @param seen how far the sender had seen the record when they decided, as a sequence number; 0 where nobody knows
 */
public record Sent(String client, String by, boolean live, long seen) {
    /** Checks the id. */
    public Sent {
        if (!client.matches("[0-9a-f][0-9a-f-]{15,63}|h-[0-9a-f]{40}")) {
            throw new IllegalArgumentException(
                    "client id \"" + client + "\": expected 16 to 64 hexadecimal digits and hyphens, as a UUID");
        }
    }

    /** Of somebody of whom nobody knows how far they had seen the record. */
    public Sent(String client, String by, boolean live) {
        this(client, by, live, 0);
    }

    /** The same of somebody who had seen the record up to an entry. */
    public Sent seeing(long head) {
        return new Sent(client, by, live, head);
    }

    /** Something done at the bench. */
    public static Sent live(String client, String by) {
        return new Sent(client, by, true);
    }

    /** Something done at the bench under a fresh id, for senders that never resend. */
    public static Sent once(String by) {
        return live(freshId(), by);
    }

    /** Something that goes with this, under an id made from this one's: the same sent twice makes the same entries. */
    public Sent along(String what) {
        String id = UUID.nameUUIDFromBytes((client + " " + what).getBytes(StandardCharsets.UTF_8))
                .toString();
        return new Sent(id, by, live, seen);
    }

    /** A fresh random id. */
    public static String freshId() {
        return UUID.randomUUID().toString();
    }
}
