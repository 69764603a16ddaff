package fayline.app.usecase.shop;

import java.util.UUID;

/**
 * Who sends something, under which id.
 *
 * @param client the id: 8 to 64 of {@code a-z 0-9 -}, made by the sender; sent twice it makes one entry
 * @param by who did it: a person of the crew, as picked on the page
 * @param live whether it is done now at the bench; otherwise it is told afterwards, and what happened is not refused
 */
public record Sent(String client, String by, boolean live) {
    /** Checks the id. */
    public Sent {
        if (!client.matches("[a-z0-9][a-z0-9-]{7,63}")) {
            throw new IllegalArgumentException("client id \"" + client
                    + "\": expected 8 to 64 of a-z, 0-9 and hyphens, beginning with a letter or digit");
        }
    }

    /** Something done at the bench. */
    public static Sent live(String client, String by) {
        return new Sent(client, by, true);
    }

    /** Something done at the bench under a fresh id, for senders that never resend. */
    public static Sent once(String by) {
        return live(freshId(), by);
    }

    /** A fresh random id. */
    public static String freshId() {
        return UUID.randomUUID().toString();
    }
}
