package fayline.app.web.frame;

import fayline.app.usecase.people.Actor;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.UnitSystem;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** One request of one screen: who is at it, what it prefers, what it sent. */
public final class Visit implements Typed {
    private static final int YEAR_S = 365 * 24 * 3600;
    private static final Pattern ID = Pattern.compile("[a-z0-9][a-z0-9-]{0,79}");
    private static final Pattern ONCE = Pattern.compile("[0-9a-f-]{8,36}");
    private static final String ACTOR = "actor";
    private static final List<String> OF_EACH_PAGE = List.of("csrf", "once", "seen-head");
    private static final String BY_ITSELF = "Fayline-By-Itself";
    private final Context ctx;

    /** Makes a visit of a request. */
    public Visit(Context ctx) {
        this.ctx = ctx;
    }

    /** The request itself, for what concerns its session and cookies. */
    public Context context() {
        return ctx;
    }

    /** Who is signed in here; empty where the program serves this machine alone, or at the door. */
    public Optional<Actor> actor() {
        return Optional.ofNullable(ctx.attribute(ACTOR));
    }

    /** Notes who is signed in here. */
    public void actor(Actor actor) {
        ctx.attribute(ACTOR, actor);
    }

    /** The theme: {@code machine}, {@code day} or {@code night}. */
    public String theme() {
        return oneOf("theme", Set.of("machine", "day", "night"), "machine");
    }

    /** The density: {@code fitting}, {@code desk} or {@code bench}. */
    public String density() {
        return oneOf("density", Set.of("fitting", "desk", "bench"), "fitting");
    }

    /** The units this screen asked for, where it did. */
    public Optional<UnitSystem> units() {
        return switch (cookie("units")) {
            case "inch" -> Optional.of(UnitSystem.INCH);
            case "metric" -> Optional.of(UnitSystem.METRIC);
            default -> Optional.empty();
        };
    }

    /** How quantities are shown on this screen, the project's units where it has no wish of its own. */
    public QuantityFormat format(UnitSystem usual) {
        return new QuantityFormat(units().orElse(usual));
    }

    /** The id of who is at the screen; empty while nobody said so. */
    public String person() {
        return actor().map(Actor::person).orElseGet(() -> {
            String id = cookie("person");
            return ID.matcher(id).matches() ? id : "";
        });
    }

    /** The project asked for in the address, else the one remembered; empty for none. */
    public String project() {
        String asked = query("project");
        if (ID.matcher(asked).matches()) {
            remember("project", asked);
            return asked;
        }
        String id = cookie("project");
        return ID.matcher(id).matches() ? id : "";
    }

    /** Keeps a preference of this screen for a year. */
    public void remember(String name, String value) {
        ctx.cookie(new Cookie(name, value, "/", YEAR_S, ctx.req().isSecure(), true, null, SameSite.STRICT));
    }

    /** A sentence that the next page shows once. */
    public void say(String sentence) {
        ctx.sessionAttribute("said", sentence);
    }

    /**
     * A sentence that the next page shows once, and the draft that is over with it.
     *
     * @param sentence the sentence
     * @param draft the name of the form whose typed text may be forgotten
     */
    public void say(String sentence, String draft) {
        say(sentence);
        ctx.sessionAttribute("draft", draft);
    }

    /** Whether a page asks by itself, to show what is new: then nobody need be before it. */
    public boolean byItself() {
        return ctx.header(BY_ITSELF) != null;
    }

    /** Whether an address is looked at, not a form sent. */
    boolean looks() {
        return ctx.method().name().equals("GET");
    }

    /** The sentence that was left for this page; it stays for whoever is led here, where a page asks by itself. */
    public String said() {
        return byItself() ? "" : orEmpty(ctx.consumeSessionAttribute("said"));
    }

    /** The draft that is over; empty for none. */
    public String draftDone() {
        return byItself() ? "" : orEmpty(ctx.consumeSessionAttribute("draft"));
    }

    /** A part of the path. */
    public String inPath(String name) {
        return ctx.pathParam(name);
    }

    /** A word after the question mark; empty where it is not there. */
    public String query(String name) {
        return orEmpty(ctx.queryParam(name));
    }

    /** A field of a form, stripped; empty where it is not there. */
    @Override
    public String field(String name) {
        return orEmpty(ctx.formParam(name)).strip();
    }

    /** A field of a form exactly as typed, with line ends as in files. */
    @Override
    public String text(String name) {
        return orEmpty(ctx.formParam(name)).replace("\r\n", "\n");
    }

    /** A field of a form with every character as it was sent: for passwords. */
    public String exact(String name) {
        return orEmpty(ctx.formParam(name));
    }

    /** All values of a field. */
    @Override
    public List<String> fields(String name) {
        return ctx.formParams(name);
    }

    /** A form that is sent at once is typed now. */
    @Override
    public Optional<Instant> moment() {
        return Optional.empty();
    }

    /** The files of a field, those left empty passed over; none where the form came without files. */
    @Override
    public List<Parcel> parcels(String name) {
        return ctx.isMultipartFormData()
                ? ctx.uploadedFiles(name).stream()
                        .filter(f -> f.size() > 0)
                        .map(Visit::parcel)
                        .toList()
                : List.of();
    }

    private static Parcel parcel(UploadedFile file) {
        return new Parcel() {
            @Override
            public long length() {
                return file.size();
            }

            @Override
            public byte[] bytes() {
                try (InputStream in = file.content()) {
                    return in.readAllBytes();
                } catch (IOException e) {
                    throw new UncheckedIOException("the file that came with the form cannot be read", e);
                }
            }
        };
    }

    /**
     * A field that must be filled.
     *
     * @throws Refusal if it is empty
     */
    public String needed(String name, String label) {
        String value = field(name);
        if (value.isEmpty()) {
            throw Refusal.input(label + " is empty. Fill it in.");
        }
        return value;
    }

    /**
     * The number under which this form's entry is made.
     *
     * @throws Refusal if the form has none
     */
    public String once() {
        String once = field("once");
        if (!ONCE.matcher(once).matches()) {
            throw Refusal.input("The form has lost its number.");
        }
        return once;
    }

    /** The fields of the form by which the same can be sent once more: what was typed, without what each page has of its own. */
    Map<String, List<String>> typed() {
        Map<String, List<String>> typed = new LinkedHashMap<>(ctx.formParamMap());
        OF_EACH_PAGE.forEach(typed::remove);
        return typed;
    }

    /** The address under which the program was reached. */
    public String home() {
        return (ctx.req().isSecure() ? "https://" : "http://") + ctx.header("Host") + "/";
    }

    /** The address of this page, with what stands after the question mark. */
    public String path() {
        String query = ctx.queryString();
        return ctx.path() + (query == null ? "" : "?" + query);
    }

    /** Shows a page. */
    public void show(String html) {
        ctx.contentType("text/html; charset=utf-8").result(html);
    }

    /** Sends a file that the browser opens. */
    public void send(byte[] bytes, String type, String name) {
        ctx.header("Content-Disposition", "inline; filename=\"" + name.replaceAll("[^A-Za-z0-9._-]", "-") + "\"");
        ctx.contentType(type).result(bytes);
    }

    /** Sets the status of the answer. */
    public void status(int status) {
        ctx.status(status);
    }

    /**
     * Leads to another of our pages after a form was taken.
     *
     * @param path an address within the program; anything else leads to Today
     */
    public void lead(String path) {
        ctx.redirect(local(path), io.javalin.http.HttpStatus.SEE_OTHER);
    }

    /** The path if it is one of ours, else Today's. */
    static String local(String path) {
        boolean ours =
                path.startsWith("/") && !path.startsWith("//") && path.chars().allMatch(c -> c > 0x20 && c != '\\');
        return ours ? path : "/";
    }

    /** Text as a part of an address. */
    public static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }

    private String oneOf(String name, Set<String> known, String usual) {
        String value = cookie(name);
        return known.contains(value) ? value : usual;
    }

    private String cookie(String name) {
        String raw = orEmpty(ctx.cookie(name));
        try {
            return URLDecoder.decode(raw, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException e) {
            return "";
        }
    }

    private static String orEmpty(@Nullable String text) {
        return text == null ? "" : text;
    }
}
