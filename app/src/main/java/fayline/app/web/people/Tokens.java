package fayline.app.web.people;

import fayline.app.web.frame.Visit;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The tokens that a browser holds: of the sign-in, and of the device. Scripts cannot read them, other sites do not send them,
 * they travel over TLS only and belong to this host alone ({@code __Host-}).
 */
final class Tokens {
    private static final String SIGN_IN = "__Host-fayline-in";
    private static final String DEVICE = "__Host-fayline-device";

    /** Until the browser is closed, or longer where the sign-in says so; the server decides when it is over. */
    private static final int SIGN_IN_S = 180 * 24 * 3600;

    private static final int DEVICE_S = 400 * 24 * 3600;

    private Tokens() {}

    static Optional<String> signIn(Visit visit) {
        return read(visit, SIGN_IN);
    }

    static Optional<String> device(Visit visit) {
        return read(visit, DEVICE);
    }

    private static Optional<String> read(Visit visit, String name) {
        @Nullable String token = visit.context().cookie(name);
        return Optional.ofNullable(token).filter(t -> !t.isEmpty() && t.length() <= 100);
    }

    static void giveSignIn(Visit visit, String token) {
        give(visit.context(), SIGN_IN, token, SIGN_IN_S);
    }

    static void giveDevice(Visit visit, String token) {
        give(visit.context(), DEVICE, token, DEVICE_S);
    }

    static void takeSignIn(Visit visit) {
        give(visit.context(), SIGN_IN, "", 0);
    }

    private static void give(Context ctx, String name, String value, int seconds) {
        ctx.cookie(new Cookie(name, value, "/", seconds, true, true, null, SameSite.STRICT));
    }
}
