package fayline.app.usecase.stores;

import fayline.app.usecase.shop.Sent;
import java.nio.charset.StandardCharsets;
import java.util.UUID;

/** Ids of entries that go with another: made from that one's, so that the same thing sent twice makes the same entries. */
final class Derived {
    private Derived() {}

    static String id(Sent sent, String what) {
        return UUID.nameUUIDFromBytes((sent.client() + " " + what).getBytes(StandardCharsets.UTF_8))
                .toString();
    }
}
