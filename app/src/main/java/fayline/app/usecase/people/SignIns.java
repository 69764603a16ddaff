package fayline.app.usecase.people;

import fayline.app.usecase.people.Devices.Device;
import fayline.flow.record.EntryKind;
import fayline.store.sql.PeopleTables;
import fayline.store.sql.PeopleTables.KnownPerson;
import fayline.store.sql.PeopleTables.SignIn;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/**
 * Signing in by password, by a paired device or by PIN, and what follows: each makes a fresh token, kept as a hash, that holds
 * until it is idle or old, is ended, or its person or device is. Every sign-in is an entry before it holds.
 */
public final class SignIns {
    /** Wrong PINs on one device, with no right one between, after which it must be paired anew. */
    public static final int WRONG_PINS_BEFORE_UNPAIRING = 20;

    private static final Duration NOTED = Duration.ofMinutes(1);
    private static final Duration CLOCK_SLACK = Duration.ofMinutes(5);
    private final PeopleTables tables;
    private final Secrets secrets;
    private final Guesses guesses;
    private final Notices notices;
    private final Clock clock;
    private final Map<String, Integer> wrongPins = new HashMap<>();

    SignIns(PeopleTables tables, Secrets secrets, Guesses guesses, Notices notices, Clock clock) {
        this.tables = tables;
        this.secrets = secrets;
        this.guesses = guesses;
        this.notices = notices;
        this.clock = clock;
    }

    /**
     * Somebody is signed in.
     *
     * @param actor who
     * @param token what the browser holds from now on
     */
    public record Entered(Actor actor, String token) {}

    /**
     * By name and password.
     *
     * @param name the id or the name, as typed
     * @param password as typed
     * @param from the network address
     */
    public Entered byPassword(String name, String password, String from) {
        guesses.require(from);
        Optional<KnownPerson> found = named(name);
        String hash = found.map(KnownPerson::passwordHash).orElse("");
        if (!secrets.isRight(password, hash)) {
            throw wrong(from, "", "Name and password do not belong together.");
        }
        return enter(found.orElseThrow(), Way.PASSWORD, "", guesses.right(from));
    }

    private Optional<KnownPerson> named(String name) {
        String typed = name.strip();
        List<KnownPerson> all = tables.people();
        return all.stream()
                .filter(p -> p.person().equals(typed))
                .findFirst()
                .or(() -> all.stream()
                        .filter(p -> p.name().toLowerCase(Locale.ROOT).equals(typed.toLowerCase(Locale.ROOT)))
                        .findFirst());
    }

    /**
     * By PIN on a known device: one's own, or one that several share.
     *
     * @param device the device
     * @param person who
     * @param pin as typed
     */
    public Entered byPin(Device device, String person, String pin) {
        String from = "device " + device.id() + " " + person;
        guesses.require(from);
        boolean mayBeHere = device.person().isEmpty() || device.person().equals(person);
        Optional<KnownPerson> found = tables.person(person).filter(p -> mayBeHere);
        if (!secrets.isRight(pin, found.map(KnownPerson::pinHash).orElse(""))) {
            DeniedException refused = wrong(from, person, "That PIN is not right.");
            countOn(device);
            throw refused;
        }
        synchronized (wrongPins) {
            wrongPins.remove(device.id());
        }
        Way way = device.person().isEmpty() ? Way.PIN : Way.DEVICE;
        return enter(found.orElseThrow(), way, device.id(), guesses.right(from));
    }

    private void countOn(Device device) {
        int wrong;
        synchronized (wrongPins) {
            wrong = wrongPins.merge(device.id(), 1, Integer::sum);
        }
        if (wrong >= WRONG_PINS_BEFORE_UNPAIRING) {
            tables.removeDevice(device.id());
            notices.tellDone(
                    EntryKind.DEVICE_ENDED,
                    "",
                    "device",
                    device.id(),
                    "label",
                    device.label(),
                    "why",
                    wrong + " wrong PINs");
            throw DeniedException.of("There were " + wrong + " wrong PINs on this device. The lead must pair it anew.");
        }
    }

    DeniedException wrong(String from, String person, String sentence) {
        Optional<Guesses.Barred> barred = guesses.wrong(from);
        barred.ifPresent(b -> notices.tell(
                EntryKind.SIGN_IN_BARRED,
                "",
                "person",
                person,
                "from",
                from,
                "tries",
                String.valueOf(b.tries()),
                "until",
                b.until().toString()));
        return DeniedException.of(sentence);
    }

    /** Refuses a code that is wrong, used or over, and counts it. */
    DeniedException wrongCode(String from) {
        return wrong(from, "", "This code is not right, was used before, or has ended. Ask for another.");
    }

    void requireTry(String from) {
        guesses.require(from);
    }

    int rightFrom(String from) {
        return guesses.right(from);
    }

    /** Enters somebody whose right to was found out. */
    Entered enter(KnownPerson person, Way way, String device, int tries) {
        notices.tell(
                EntryKind.SIGNED_IN,
                person.person(),
                "person",
                person.person(),
                "way",
                way.key(),
                "device",
                device,
                "tries",
                tries == 0 ? "" : String.valueOf(tries));
        String token = secrets.token();
        Instant now = clock.instant();
        SignIn s = new SignIn(
                UUID.randomUUID().toString(), Secrets.fingerprint(token), person.person(), device, way.key(), now, now);
        tables.add(s);
        return new Entered(actor(person, s), token);
    }

    private static Actor actor(KnownPerson p, SignIn s) {
        return new Actor(
                p.person(), p.name(), Role.of(p.role()).orElse(Role.VIEWER), Way.ofKey(s.way()), s.id(), s.device());
    }

    /** Who holds a token and uses it; nobody where it was never given out, has ended, or is too old. */
    public Optional<Actor> who(String token) {
        return holding(token).flatMap(s -> {
            Optional<KnownPerson> person = tables.person(s.person());
            Instant now = clock.instant();
            if (person.isPresent() && now.isAfter(s.seen().plus(NOTED))) {
                tables.seen(s.id(), now);
            }
            return person.map(p -> actor(p, s));
        });
    }

    /** The same of what a page asks by itself: nobody need be there, so the sign-in does not last longer for it. */
    public Optional<Actor> holder(String token) {
        return holding(token).flatMap(s -> tables.person(s.person()).map(p -> actor(p, s)));
    }

    private Optional<SignIn> holding(String token) {
        Optional<SignIn> found = tables.signInOf(Secrets.fingerprint(token));
        if (found.isPresent() && isOver(found.get(), clock.instant())) {
            tables.removeSignIn(found.get().id());
            return Optional.empty();
        }
        return found;
    }

    /** Idle or old; or the clock was set back, so that nobody can tell. */
    private static boolean isOver(SignIn s, Instant now) {
        Way way = Way.ofKey(s.way());
        return now.isAfter(s.seen().plus(way.idle()))
                || now.isAfter(s.began().plus(way.age()))
                || now.isBefore(s.seen().minus(CLOCK_SLACK));
    }

    /**
     * A sign-in that holds.
     *
     * @param id the id
     * @param person who
     * @param device on which known device; empty for none
     * @param way how they signed in
     * @param began since when
     * @param seen the last request, to the minute or so
     */
    public record Current(String id, String person, String device, Way way, Instant began, Instant seen) {}

    /** Every sign-in that still holds, the oldest first. */
    public List<Current> all() {
        Instant now = clock.instant();
        return tables.signIns().stream()
                .filter(s -> !isOver(s, now))
                .map(s -> new Current(s.id(), s.person(), s.device(), Way.ofKey(s.way()), s.began(), s.seen()))
                .toList();
    }

    /** Signs out. */
    public void leave(Actor actor) {
        tables.removeSignIn(actor.signIn());
        notices.tellDone(EntryKind.SIGNED_OUT, actor.person(), "person", actor.person(), "why", "left");
    }

    /**
     * Ends a sign-in.
     *
     * @param by who ends it: its own person, or who says who may enter
     * @param id the sign-in
     */
    public void end(Actor by, String id) {
        SignIn s = tables.signIns().stream()
                .filter(one -> one.id().equals(id))
                .filter(one -> one.person().equals(by.person()) || by.may(Act.KEEP_PEOPLE))
                .findFirst()
                .orElseThrow(() -> DeniedException.of("There is no such sign-in; it may have ended meanwhile."));
        tables.removeSignIn(id);
        notices.tellDone(EntryKind.SIGNED_OUT, by.person(), "person", s.person(), "why", "ended");
    }
}
