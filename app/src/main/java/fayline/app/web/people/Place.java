package fayline.app.web.people;

import io.javalin.http.Context;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Arrays;

/** Where a request comes from, for counting tries: an IPv4 address, or the network half of an IPv6 address. */
final class Place {
    private static final int V6_NETWORK_BYTES = 8;

    private Place() {}

    static String of(Context ctx) {
        String address = ctx.req().getRemoteAddr();
        if (address == null || !address.contains(":")) {
            return String.valueOf(address);
        }
        String bare = address.replaceAll("[\\[\\]]|%.*", "");
        try {
            byte[] bytes = InetAddress.getByName(bare).getAddress();
            if (bytes.length == 2 * V6_NETWORK_BYTES) {
                // within one network a sender can take any address it likes
                Arrays.fill(bytes, V6_NETWORK_BYTES, bytes.length, (byte) 0);
                return InetAddress.getByAddress(bytes).getHostAddress() + "/64";
            }
            return bare;
        } catch (UnknownHostException e) {
            return bare;
        }
    }
}
