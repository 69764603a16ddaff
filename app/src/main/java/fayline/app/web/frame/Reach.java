package fayline.app.web.frame;

import io.javalin.http.Context;
import java.util.Locale;
import java.util.Set;
import java.util.function.IntSupplier;
import java.util.stream.Collectors;

/**
 * From where the program can be reached and under which names.
 *
 * @param tls whether it speaks TLS; always, beyond this machine
 * @param names its names and addresses, lower case, IPv6 addresses without brackets
 * @param port the port, known once it listens
 */
public record Reach(boolean tls, Set<String> names, IntSupplier port) {
    private static final int TLS_PORT = 443;

    /** Copies the set. */
    public Reach {
        names = names.stream().map(n -> n.toLowerCase(Locale.ROOT)).collect(Collectors.toUnmodifiableSet());
    }

    /** This machine alone. */
    public static Reach thisMachine(IntSupplier port) {
        return new Reach(false, Set.of("127.0.0.1", "localhost", "::1"), port);
    }

    /** {@code http} or {@code https}. */
    public String scheme() {
        return tls ? "https" : "http";
    }

    /** Whether a request's Host is one of ours: a name we have, or the very address at which the request arrived. */
    boolean isOurs(String host, Context ctx) {
        String lower = host.toLowerCase(Locale.ROOT);
        String at = ":" + port.getAsInt();
        String name = lower;
        if (lower.endsWith(at)) {
            name = lower.substring(0, lower.length() - at.length());
        } else if (port.getAsInt() != TLS_PORT || !tls) {
            return false;
        }
        String bare = name.startsWith("[") && name.endsWith("]") ? name.substring(1, name.length() - 1) : name;
        return names.contains(bare) || (tls && bare.equals(arrivedAt(ctx)));
    }

    private static String arrivedAt(Context ctx) {
        String address = ctx.req().getLocalAddr();
        if (address == null) {
            return "";
        }
        String bare = address.startsWith("[") ? address.substring(1, address.length() - 1) : address;
        int scope = bare.indexOf('%');
        return (scope < 0 ? bare : bare.substring(0, scope)).toLowerCase(Locale.ROOT);
    }
}
