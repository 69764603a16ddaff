package fayline.app.usecase.people;

import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.project.Definition;
import fayline.flow.project.shop.Person;
import fayline.flow.project.shop.Skill;
import fayline.flow.record.EntryKind;
import fayline.store.sql.PeopleTables;
import fayline.store.sql.PeopleTables.KnownPerson;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Who may enter, in which role, and their secrets. Lead, crew and inspectors stand in the shop's list of people, because their
 * names stand under entries; a viewer need not. What gives somebody more is recorded before it holds, what takes it away
 * holds before it is recorded; a change of role may do both and is recorded first.
 */
public final class Roster {
    private static final int LONGEST_NAME = 100;
    private final ShopRecord record;
    private final PeopleTables tables;
    private final Secrets secrets;
    private final Notices notices;

    Roster(ShopRecord record, PeopleTables tables, Secrets secrets, Notices notices) {
        this.record = record;
        this.tables = tables;
        this.secrets = secrets;
        this.notices = notices;
    }

    /**
     * Somebody who may enter.
     *
     * @param person the id
     * @param name what people call them
     * @param role what they are in the shop
     * @param password whether a password is set
     * @param pin whether a PIN is set
     */
    public record Known(String person, String name, Role role, boolean password, boolean pin) {}

    /** Everybody who may enter, by id. */
    public List<Known> all() {
        return tables.people().stream().map(Roster::known).toList();
    }

    /** One of them. */
    public Optional<Known> find(String person) {
        return tables.person(person).map(Roster::known);
    }

    /** Whether somebody leads, so that the program is set up. */
    public boolean hasLead() {
        return tables.people().stream().anyMatch(p -> p.role().equals(Role.LEAD.word()));
    }

    /** The shop's list of people, for choosing. */
    public List<Person> crewList() {
        List<Person> all = new ArrayList<>();
        for (Definition d : record.definitions()) {
            d.shop().people().stream()
                    .filter(p -> all.stream().noneMatch(a -> a.id().equals(p.id())))
                    .forEach(all::add);
        }
        return List.copyOf(all);
    }

    /** Whether the shop's list of people lets somebody sign hold points. */
    public boolean signs(String person) {
        return crewList().stream()
                .anyMatch(p -> p.id().equals(person) && p.skills().contains(Skill.SIGN));
    }

    private static Known known(KnownPerson p) {
        return new Known(
                p.person(),
                p.name(),
                Role.of(p.role()).orElse(Role.VIEWER),
                !p.passwordHash().isEmpty(),
                !p.pinHash().isEmpty());
    }

    /**
     * Lets somebody enter from now on.
     *
     * @param by who says so; empty for whoever has the code from the console
     * @param person id of one of the shop's list; empty for a viewer who does not stand there
     * @param name a viewer's name; for others the list says it
     * @param role what they may
     */
    public Known admit(String by, String person, String name, Role role) {
        String id = person.isEmpty() && role == Role.VIEWER ? idOf(name) : person;
        String called = person.isEmpty() && role == Role.VIEWER ? viewer(name) : listed(person, role);
        if (called.length() > LONGEST_NAME) {
            throw DeniedException.of(
                    "The name has " + called.length() + " characters, expected at most " + LONGEST_NAME + ".");
        }
        if (tables.person(id).isPresent()) {
            throw DeniedException.of(called + " may enter already. Change the role instead.");
        }
        notices.tell(EntryKind.PERSON_ADMITTED, by, "person", id, "name", called, "role", role.word());
        KnownPerson fresh = new KnownPerson(id, called, role.word(), "", "");
        tables.put(fresh);
        return known(fresh);
    }

    private static String viewer(String name) {
        String called = name.strip();
        if (called.isEmpty()) {
            throw DeniedException.of("A viewer needs a name.");
        }
        return called;
    }

    /** The name that the shop's list gives somebody. */
    private String listed(String person, Role role) {
        if (person.isEmpty()) {
            throw DeniedException.of(
                    "Nobody is picked. The " + role.word() + " is picked from the shop's list of people.");
        }
        return nameInList(person)
                .orElseThrow(() -> DeniedException.of(
                        "The shop's list of people has no \"" + person + "\". Enter the person in people.yaml first."));
    }

    private Optional<String> nameInList(String person) {
        return crewList().stream()
                .filter(p -> p.id().equals(person))
                .map(Person::name)
                .findFirst();
    }

    /** An id for somebody who stands on no list: the letters of the name, with a number where it is taken. */
    private String idOf(String name) {
        String base = Normalizer.normalize(name.strip(), Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        base = "guest-" + (base.isEmpty() ? "one" : base.substring(0, Math.min(40, base.length())));
        String id = base;
        for (int n = 2; tables.person(id).isPresent(); n++) {
            id = base + "-" + n;
        }
        return id;
    }

    /** Changes what somebody may. The last lead stays lead. */
    public void change(String by, String person, Role role) {
        KnownPerson old = needed(person);
        if (old.role().equals(role.word())) {
            return;
        }
        keepALead(old);
        if (role != Role.VIEWER && nameInList(person).isEmpty()) {
            throw DeniedException.of(
                    old.name() + " does not stand in the shop's list of people and can only be a viewer.");
        }
        notices.tell(EntryKind.PERSON_CHANGED, by, "person", person, "what", "role", "role", role.word());
        tables.put(new KnownPerson(person, old.name(), role.word(), old.passwordHash(), old.pinHash()));
        tables.removeSignInsOf(person, "");
    }

    /** Takes somebody out, with their devices and all their sign-ins. */
    public void remove(String by, String person) {
        KnownPerson old = needed(person);
        keepALead(old);
        tables.removePerson(person);
        notices.tellDone(EntryKind.PERSON_CHANGED, by, "person", person, "what", "removed");
    }

    private void keepALead(KnownPerson old) {
        boolean lead = old.role().equals(Role.LEAD.word());
        if (lead
                && tables.people().stream()
                                .filter(p -> p.role().equals(Role.LEAD.word()))
                                .count()
                        == 1) {
            throw DeniedException.of(old.name() + " is the only lead. Make somebody else lead first.");
        }
    }

    /**
     * Sets a password that was not known before, or in the place of one that was forgotten; ends all sign-ins of the person.
     *
     * @param by who lets it be set
     */
    public void setPassword(String by, String person, String password) {
        putPassword(by, person, password, "");
    }

    private void putPassword(String by, String person, String password, String butFor) {
        KnownPerson old = needed(person);
        requirePassword(person, password);
        String hash = secrets.hash(password);
        notices.tell(EntryKind.PERSON_CHANGED, by, "person", person, "what", "password");
        tables.put(new KnownPerson(person, old.name(), old.role(), hash, old.pinHash()));
        tables.removeSignInsOf(person, butFor);
    }

    /** Refuses a password that breaks a rule; the person's own names are what others would try first. */
    void requirePassword(String person, String password) {
        String name = find(person).map(Known::name).or(() -> nameInList(person)).orElse("");
        SecretRules.requirePassword(password, List.of(name, person, "fayline"));
    }

    /** Whether somebody's password is this one. */
    boolean isPassword(String person, String password) {
        return secrets.isRight(password, needed(person).passwordHash());
    }

    /** Whether somebody's PIN is this one, or there is none yet. */
    boolean isPin(String person, String pin) {
        String hash = needed(person).pinHash();
        return hash.isEmpty() || secrets.isRight(pin, hash);
    }

    /** Changes one's own password. Other sign-ins of the person end. */
    void changePassword(Actor actor, String password) {
        putPassword(actor.person(), actor.person(), password, actor.signIn());
    }

    /** Sets somebody's PIN. */
    public void setPin(String by, String person, String pin) {
        KnownPerson old = needed(person);
        SecretRules.requirePin(pin);
        String hash = secrets.hash(pin);
        notices.tell(EntryKind.PERSON_CHANGED, by, "person", person, "what", "pin");
        tables.put(new KnownPerson(person, old.name(), old.role(), old.passwordHash(), hash));
    }

    private KnownPerson needed(String person) {
        return tables.person(person).orElseThrow(() -> DeniedException.of("Nobody of that name may enter."));
    }
}
