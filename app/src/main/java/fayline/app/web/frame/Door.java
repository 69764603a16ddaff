package fayline.app.web.frame;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The checks at the door, for every request, static files and unknown addresses included: the request is meant for this
 * machine, comes from our own pages, is not too long, and, where it changes something, carries the token of its session.
 */
public final class Door {
    /** Longest request taken, in bytes: a definition file of some ten thousand lines. */
    public static final long LONGEST = 2_000_000;

    /** Longest request with pictures, in bytes: two originals, or six that the phone made smaller. */
    public static final long LONGEST_WITH_PICTURES = 30_000_000;

    /** Longest request of what a phone kept, in bytes: notes with six photos that it made smaller. */
    public static final long LONGEST_KEPT = 12_000_000;

    private static final String KEPT = "/kept/send";

    /** Where files may come: notes, deviations, inspections, lots with their certificate, tables, labels. */
    private static final Pattern TAKES_PICTURES = Pattern.compile(
            "/card/[^/]+/[^/]+/[^/]+/(note|wrong)|/inspections/(visit|finding|put-right)|/stores/(receive|table|label)");

    private static final String POLICY = "default-src 'self'; object-src 'none'; base-uri 'none'; form-action 'self'; "
            + "frame-ancestors 'none'; img-src 'self' data: blob:";
    private static final Pattern FILE = Pattern.compile("/(static|fonts|lib)/[A-Za-z0-9/._-]+");
    private static final String TOKEN = "csrf";
    private static final Set<String> READING = Set.of("GET", "HEAD");
    private static final List<String> OWN_PAGE = List.of("Open the page from Fayline itself and do it again there.");
    /** A year, as browsers take it. */
    private static final String ONLY_TLS = "max-age=31536000";

    private final SecureRandom random = new SecureRandom();
    private final Reach reach;
    private final Gate gate;

    /**
     * Makes the door.
     *
     * @param reach from where the program can be reached
     * @param gate asks who it is and whether they may
     */
    public Door(Reach reach, Gate gate) {
        this.reach = reach;
        this.gate = gate;
    }

    /** Puts the checks before every handler. */
    public void addTo(RoutesConfig routes) {
        routes.before(ctx -> {
            headers(ctx);
            host(ctx);
            origin(ctx);
            length(ctx);
            if (!gate.who(ctx)) {
                ctx.skipRemainingHandlers();
                return;
            }
            if (!READING.contains(ctx.method().name())) {
                readParts(ctx);
                token(ctx);
            }
        });
        routes.beforeMatched(gate::may);
    }

    /** Whether who asked is still known, to be asked again and again by answers that go on and on. */
    public BooleanSupplier stays(Visit visit) {
        return gate.stays(visit.context());
    }

    /** From where the program can be reached. */
    public Reach reach() {
        return reach;
    }

    /** Ends the session's token: the next page carries another. */
    public void renew(Visit visit) {
        Context ctx = visit.context();
        ensureToken(ctx);
        ctx.sessionAttribute(TOKEN, null);
        ctx.req().changeSessionId();
    }

    /** The session's token, made on first use. */
    public String token(Visit visit) {
        return ensureToken(visit.context());
    }

    private String ensureToken(Context ctx) {
        String known = ctx.sessionAttribute(TOKEN);
        if (known != null) {
            return known;
        }
        byte[] bytes = new byte[32];
        random.nextBytes(bytes);
        String made = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        ctx.sessionAttribute(TOKEN, made);
        return made;
    }

    private void headers(Context ctx) {
        ctx.header("Content-Security-Policy", POLICY);
        ctx.header("X-Content-Type-Options", "nosniff");
        ctx.header("X-Frame-Options", "DENY");
        // not "no-referrer": browsers then send "Origin: null" with our own forms
        ctx.header("Referrer-Policy", "same-origin");
        ctx.header("Cross-Origin-Opener-Policy", "same-origin");
        ctx.header("Cross-Origin-Resource-Policy", "same-origin");
        ctx.header("Permissions-Policy", "camera=(), microphone=(), geolocation=()");
        ctx.header("Vary", "Accept-Encoding, Cookie, HX-Request");
        if (reach.tls()) {
            ctx.header("Strict-Transport-Security", ONLY_TLS);
        }
        ctx.header("Cache-Control", isFile(ctx.path()) ? "no-cache" : "no-store");
    }

    /** Whether an address is one of the program's own files, which tell nothing of a shop. */
    public static boolean isFile(String path) {
        return FILE.matcher(path).matches() && !path.contains("..");
    }

    private void host(Context ctx) {
        String host = ctx.header("Host");
        if (host == null || !reach.isOurs(host, ctx)) {
            throw new Refusal(
                    403,
                    "The request was sent to the name \"" + shown(host) + "\", which is not this machine's own.",
                    List.of("Open the address that the program printed when it started."));
        }
    }

    private void origin(Context ctx) {
        String origin = ctx.header("Origin");
        if (origin != null && !origin.equalsIgnoreCase(reach.scheme() + "://" + ctx.header("Host"))) {
            throw new Refusal(
                    403, "The request came from a page of \"" + shown(origin) + "\", not from Fayline.", OWN_PAGE);
        }
        String site = ctx.header("Sec-Fetch-Site");
        if (site == null || site.equals("same-origin") || site.equals("none")) {
            return;
        }
        boolean followedLink = READING.contains(ctx.method().name())
                && "navigate".equals(ctx.header("Sec-Fetch-Mode"))
                && "document".equals(ctx.header("Sec-Fetch-Dest"));
        if (!followedLink) {
            throw new Refusal(403, "The request came from a page of another site, not from Fayline.", OWN_PAGE);
        }
    }

    private static void length(Context ctx) {
        long length = ctx.req().getContentLengthLong();
        boolean pictures = inParts(ctx);
        if (pictures && !TAKES_PICTURES.matcher(ctx.path()).matches()) {
            throw new Refusal(415, "Files are not taken in this form.", List.of("Paste the text into the field."));
        }
        if (length < 0 && (pictures || ctx.header("Transfer-Encoding") != null)) {
            throw new Refusal(
                    411, "What was sent does not say how long it is.", List.of("Send it from the page itself."));
        }
        long longest = pictures ? LONGEST_WITH_PICTURES : ctx.path().equals(KEPT) ? LONGEST_KEPT : LONGEST;
        if (length > longest) {
            hearOut(ctx, 8 * LONGEST + longest);
            throw new Refusal(
                    413,
                    "What was sent is longer than " + longest / 1_000_000 + " MB.",
                    List.of(
                            pictures
                                    ? "Send fewer pictures at a time, or leave \"Keep the original\" unticked."
                                    : "Split the file into several of its kind, in a folder named for the kind."));
        }
    }

    private static boolean inParts(Context ctx) {
        String type = ctx.header("Content-Type");
        return !READING.contains(ctx.method().name())
                && type != null
                && type.toLowerCase(Locale.ROOT).startsWith("multipart/");
    }

    /** Reads what came in parts once, so that what breaks off or is malformed is told here and nowhere else. */
    private static void readParts(Context ctx) {
        if (inParts(ctx)) {
            try {
                ctx.formParamMap();
            } catch (Exception e) {
                throw new Refusal(
                        400,
                        "What was sent breaks off, or is not as a form is sent.",
                        List.of("Send it once more.", "Send fewer pictures at a time."));
            }
        }
    }

    /** Lets the sender finish, within reason: who is cut off while still sending may never see why. */
    private static void hearOut(Context ctx, long most) {
        byte[] passedOver = new byte[1 << 16];
        try (InputStream in = ctx.req().getInputStream()) {
            long heard = 0;
            int read = 0;
            while (read >= 0 && heard < most) {
                heard += read;
                read = in.read(passedOver);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("the sender broke off", e);
        }
    }

    private static void token(Context ctx) {
        String known = ctx.sessionAttribute(TOKEN);
        String given = ctx.header("X-CSRF-Token");
        if (given == null) {
            given = ctx.formParam(TOKEN);
        }
        if (known == null || given == null || !same(known, given)) {
            throw new Refusal(
                    403,
                    "The page was opened before the program was last started, so it may not change anything.",
                    List.of("Go back and reload the page: what was typed is still there, and then send it again."));
        }
    }

    private static boolean same(String a, String b) {
        return MessageDigest.isEqual(a.getBytes(StandardCharsets.UTF_8), b.getBytes(StandardCharsets.UTF_8));
    }

    private static String shown(@Nullable String text) {
        return text == null ? "" : text.length() > 80 ? text.substring(0, 80) + "..." : text;
    }
}
