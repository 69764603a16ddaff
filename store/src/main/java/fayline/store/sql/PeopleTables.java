package fayline.store.sql;

import static fayline.store.sql.EntryRows.field;

import com.zaxxer.hikari.HikariDataSource;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import org.jooq.impl.DSL;

/**
 * Who may enter from the shop's network: people, the phones and tablets that are known, and who is signed in now. Secrets are
 * kept as hashes that others made; this class makes none. Each change is on the disk before its method returns.
 */
public final class PeopleTables {
    private static final Table<Record> PEOPLE = table("known_person");
    private static final Table<Record> DEVICES = table("known_device");
    private static final Table<Record> SIGN_INS = table("sign_in");
    private static final Field<String> ID = field("id", String.class);
    private static final Field<String> PERSON = field("person", String.class);
    private static final Field<String> NAME = field("name", String.class);
    private static final Field<String> ROLE = field("role", String.class);
    private static final Field<String> PASSWORD = field("password_hash", String.class);
    private static final Field<String> PIN = field("pin_hash", String.class);
    private static final Field<String> LABEL = field("label", String.class);
    private static final Field<String> SORT = field("sort", String.class);
    private static final Field<String> TOKEN = field("token_hash", String.class);
    private static final Field<String> PAIRED = field("paired", String.class);
    private static final Field<String> DEVICE = field("device", String.class);
    private static final Field<String> WAY = field("way", String.class);
    private static final Field<String> BEGAN = field("began", String.class);
    private static final Field<String> SEEN = field("seen", String.class);
    private final HikariDataSource pool;
    private final Engine engine;

    PeopleTables(HikariDataSource pool, Engine engine) {
        this.pool = pool;
        this.engine = engine;
    }

    private static Table<Record> table(String name) {
        return DSL.table(DSL.unquotedName(name));
    }

    /**
     * Somebody who may enter.
     *
     * @param person the id, of the crew list where the person stands there
     * @param name what people call them
     * @param role the key of what they may
     * @param passwordHash hash of the password; empty for none
     * @param pinHash hash of the PIN; empty for none
     */
    public record KnownPerson(String person, String name, String role, String passwordHash, String pinHash) {}

    /**
     * A phone, tablet or desk machine that was paired.
     *
     * @param id the id
     * @param label what the lead calls it
     * @param sort the key of its sort
     * @param person whose it is; empty where several share it
     * @param tokenHash hash of the token that it holds
     * @param paired when it was paired
     */
    public record KnownDevice(String id, String label, String sort, String person, String tokenHash, Instant paired) {}

    /**
     * Somebody who is signed in.
     *
     * @param id the id
     * @param tokenHash hash of the token that the browser holds
     * @param person who
     * @param device on which known device; empty for none
     * @param way the key of how they signed in
     * @param began since when
     * @param seen the last request, to the minute or so
     */
    public record SignIn(
            String id, String tokenHash, String person, String device, String way, Instant began, Instant seen) {}

    /** Everybody who may enter, by id. */
    public List<KnownPerson> people() {
        return read(PeopleTables::people);
    }

    static List<KnownPerson> people(DSLContext db) {
        return db.select(PERSON, NAME, ROLE, PASSWORD, PIN)
                .from(PEOPLE)
                .orderBy(PERSON)
                .fetch(PeopleTables::person);
    }

    /** One of them. */
    public Optional<KnownPerson> person(String id) {
        return read(db -> db.select(PERSON, NAME, ROLE, PASSWORD, PIN)
                .from(PEOPLE)
                .where(PERSON.eq(id))
                .fetchOptional(PeopleTables::person));
    }

    /** Adds somebody, or puts this in the place of what was kept of them. */
    public void put(KnownPerson p) {
        write(db -> {
            db.deleteFrom(PEOPLE).where(PERSON.eq(p.person())).execute();
            db.insertInto(PEOPLE, PERSON, NAME, ROLE, PASSWORD, PIN)
                    .values(p.person(), p.name(), p.role(), p.passwordHash(), p.pinHash())
                    .execute();
        });
    }

    /** Takes somebody out, with their own devices and all their sign-ins. */
    public void removePerson(String id) {
        write(db -> {
            db.deleteFrom(SIGN_INS).where(PERSON.eq(id)).execute();
            db.deleteFrom(DEVICES).where(PERSON.eq(id)).execute();
            db.deleteFrom(PEOPLE).where(PERSON.eq(id)).execute();
        });
    }

    /** Every known device, the oldest first. */
    public List<KnownDevice> devices() {
        return read(PeopleTables::devices);
    }

    static List<KnownDevice> devices(DSLContext db) {
        return db.select(ID, LABEL, SORT, PERSON, TOKEN, PAIRED)
                .from(DEVICES)
                .orderBy(PAIRED, ID)
                .fetch(PeopleTables::device);
    }

    /** The device that holds a token. */
    public Optional<KnownDevice> deviceOf(String tokenHash) {
        return read(db -> db.select(ID, LABEL, SORT, PERSON, TOKEN, PAIRED)
                .from(DEVICES)
                .where(TOKEN.eq(tokenHash))
                .fetchOptional(PeopleTables::device));
    }

    /** Adds a device. */
    public void add(KnownDevice d) {
        write(db -> db.insertInto(DEVICES, ID, LABEL, SORT, PERSON, TOKEN, PAIRED)
                .values(
                        d.id(),
                        d.label(),
                        d.sort(),
                        d.person(),
                        d.tokenHash(),
                        d.paired().toString())
                .execute());
    }

    /** Takes a device out, with the sign-ins on it. */
    public void removeDevice(String id) {
        write(db -> {
            db.deleteFrom(SIGN_INS).where(DEVICE.eq(id)).execute();
            db.deleteFrom(DEVICES).where(ID.eq(id)).execute();
        });
    }

    /** Every sign-in that was not ended, the oldest first. */
    public List<SignIn> signIns() {
        return read(db -> db.select(ID, TOKEN, PERSON, DEVICE, WAY, BEGAN, SEEN)
                .from(SIGN_INS)
                .orderBy(BEGAN, ID)
                .fetch(PeopleTables::signIn));
    }

    /** The sign-in of a token. */
    public Optional<SignIn> signInOf(String tokenHash) {
        return read(db -> db.select(ID, TOKEN, PERSON, DEVICE, WAY, BEGAN, SEEN)
                .from(SIGN_INS)
                .where(TOKEN.eq(tokenHash))
                .fetchOptional(PeopleTables::signIn));
    }

    /** Adds a sign-in. */
    public void add(SignIn s) {
        write(db -> db.insertInto(SIGN_INS, ID, TOKEN, PERSON, DEVICE, WAY, BEGAN, SEEN)
                .values(
                        s.id(),
                        s.tokenHash(),
                        s.person(),
                        s.device(),
                        s.way(),
                        s.began().toString(),
                        s.seen().toString())
                .execute());
    }

    /** Notes that a sign-in is in use. */
    public void seen(String id, Instant at) {
        write(db ->
                db.update(SIGN_INS).set(SEEN, at.toString()).where(ID.eq(id)).execute());
    }

    /** Ends one sign-in. */
    public void removeSignIn(String id) {
        end(ID.eq(id));
    }

    /** Ends the sign-ins of somebody, but for one. */
    public void removeSignInsOf(String person, String butFor) {
        end(PERSON.eq(person).and(ID.ne(butFor)));
    }

    private void end(Condition which) {
        write(db -> db.deleteFrom(SIGN_INS).where(which).execute());
    }

    private <T> T read(Function<DSLContext, T> question) {
        return Transaction.read(pool, engine, question);
    }

    private void write(Consumer<DSLContext> change) {
        Transaction.write(pool, engine, db -> {
            change.accept(db);
            return Boolean.TRUE;
        });
    }

    private static KnownPerson person(Record r) {
        return new KnownPerson(r.get(PERSON), r.get(NAME), r.get(ROLE), r.get(PASSWORD), r.get(PIN));
    }

    private static KnownDevice device(Record r) {
        return new KnownDevice(
                r.get(ID), r.get(LABEL), r.get(SORT), r.get(PERSON), r.get(TOKEN), Instant.parse(r.get(PAIRED)));
    }

    private static SignIn signIn(Record r) {
        return new SignIn(
                r.get(ID),
                r.get(TOKEN),
                r.get(PERSON),
                r.get(DEVICE),
                r.get(WAY),
                Instant.parse(r.get(BEGAN)),
                Instant.parse(r.get(SEEN)));
    }
}
