package fayline.app.usecase.people;

import fayline.app.usecase.people.Devices.Paired;
import fayline.app.usecase.people.SignIns.Entered;
import fayline.app.usecase.shop.Judge;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.record.EntryKind;
import fayline.store.sql.PeopleTables;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * The people of one shop on its network, put together: roster, devices, sign-ins and one-time codes. Where the program serves
 * this machine alone there is none of it.
 */
public final class People {
    /** New visitors a minute from one place, and from all places: what they hold in memory stays small. */
    private static final int VISITS_A_MINUTE = 60;

    private static final int ALL_VISITS_A_MINUTE = 300;

    /** Refused attempts a minute that are entered, of one person and of all: more are refused and not entered. */
    private static final int REFUSED_A_MINUTE = 30;

    private static final int ALL_REFUSED_A_MINUTE = 200;
    private final PeopleTables tables;
    private final Clock machine;
    private final Notices notices;
    private final Codes codes;
    private final Roster roster;
    private final Devices devices;
    private final SignIns signIns;
    private final Judge judge;
    private final Guesses visits;
    private final Guesses refusals;

    /**
     * Puts it together.
     *
     * @param record the shop's record, to tell it
     * @param tables what is kept beside the record
     * @param machine the machine's clock, not a demonstration's
     * @param random a generator fit for secrets
     */
    public People(ShopRecord record, PeopleTables tables, Clock machine, SecureRandom random) {
        Secrets secrets = new Secrets(random);
        this.tables = tables;
        this.machine = machine;
        this.notices = new Notices(record);
        this.codes = new Codes(secrets, machine);
        this.roster = new Roster(record, tables, secrets, notices);
        this.devices = new Devices(tables, secrets, notices, machine);
        this.signIns = new SignIns(tables, secrets, new Guesses(machine), notices, machine);
        this.visits = new Guesses(machine, VISITS_A_MINUTE, ALL_VISITS_A_MINUTE);
        this.refusals = new Guesses(machine, REFUSED_A_MINUTE, ALL_REFUSED_A_MINUTE);
        this.judge = new ByRole(record, roster, this::refused);
    }

    /** Who may enter. */
    public Roster roster() {
        return roster;
    }

    /** The known devices. */
    public Devices devices() {
        return devices;
    }

    /** Signing in and out. */
    public SignIns signIns() {
        return signIns;
    }

    /** Judges every entry by the role of who makes it. */
    public Judge judge() {
        return judge;
    }

    /** A code for whoever is at the console: it makes the lead, or gives a lead a new password. */
    public String setUpCode() {
        return codes.issue(new Grant.SetUp());
    }

    /** How long such a code holds. */
    public Duration setUpLife() {
        return Codes.lifeOf(new Grant.SetUp());
    }

    /**
     * A code that pairs a device.
     *
     * @param by who issues it
     * @param person whose device it is; empty where several share it
     * @param label what it is called
     */
    public String pairingCode(Actor by, String person, String label) {
        requirePeople(by);
        if (!person.isEmpty() && roster.find(person).isEmpty()) {
            throw DeniedException.of("Nobody of that name may enter.");
        }
        return codes.issue(new Grant.Pairing(person, Devices.label(label), by.person()));
    }

    /** A code by which somebody sets a first or new secret: a lead the password, others the PIN. */
    public String secretCode(Actor by, String person) {
        requirePeople(by);
        if (roster.find(person).isEmpty()) {
            throw DeniedException.of("Nobody of that name may enter.");
        }
        return codes.issue(new Grant.NewSecret(person));
    }

    /** How long pairing codes and codes for secrets hold. */
    public Duration codeLife() {
        return Codes.lifeOf(new Grant.NewSecret(""));
    }

    private static void requirePeople(Actor by) {
        if (!by.may(Act.KEEP_PEOPLE)) {
            throw DeniedException.of("You may not " + Act.KEEP_PEOPLE.words() + ".");
        }
    }

    /**
     * What a code allows; using it up.
     *
     * @param typed as typed
     * @param from the network address
     */
    public Grant use(String typed, String from) {
        signIns.requireTry(from);
        Grant grant = codes.use(typed).orElseThrow(() -> signIns.wrongCode(from));
        signIns.rightFrom(from);
        return grant;
    }

    /**
     * Lets somebody enter from now on.
     *
     * @param by who says so
     * @param person id of one of the shop's list; empty for a viewer who does not stand there
     * @param name a viewer's name; for others the list says it
     * @param role what they may
     */
    public void admit(Actor by, String person, String name, Role role) {
        requirePeople(by);
        roster.admit(by.person(), person, name, role);
    }

    /** Changes what somebody may; ends their sign-ins. */
    public void change(Actor by, String person, Role role) {
        change(by, person, Optional.empty(), role);
    }

    /**
     * The same by somebody who had seen what the role was: refused where it is another by now.
     *
     * @param was the role that was seen; empty where nobody knows
     */
    public synchronized void change(Actor by, String person, Optional<Role> was, Role role) {
        requirePeople(by);
        Optional<Roster.Known> now = roster.find(person);
        if (was.isPresent()
                && now.isPresent()
                && now.get().role() != was.get()
                && now.get().role() != role) {
            throw DeniedException.of("Nothing was changed: " + now.get().name() + " was "
                    + was.get().word() + " when you opened the page and is "
                    + now.get().role().word() + " now. Choose again if you still want to.");
        }
        roster.change(by.person(), person, role);
    }

    /** Ends the codes of somebody and takes them out. */
    public void remove(Actor by, String person) {
        requirePeople(by);
        codes.endFor(person);
        roster.remove(by.person(), person);
    }

    /** Makes a device known by a grant. */
    public Paired pair(Grant.Pairing grant) {
        return devices.pair(grant);
    }

    /** Enters the owner of a device that was just paired. */
    public Entered enterOn(Paired paired) {
        return tables.person(paired.device().person())
                .map(p -> signIns.enter(p, Way.DEVICE, paired.device().id(), 0))
                .orElseThrow(() -> DeniedException.of("Its owner may no longer enter."));
    }

    /**
     * Sets the lead up, or gives a lead a new password.
     *
     * @param grant from the console
     * @param person one of the shop's list
     * @param password the password
     */
    public void setUp(Grant.SetUp grant, String person, String password) {
        Optional<Roster.Known> known = roster.find(person);
        if (known.isPresent() && known.get().role() != Role.LEAD) {
            throw DeniedException.of(known.get().name() + " may enter as "
                    + known.get().role().word() + ". Pick the lead, or somebody who may not enter yet.");
        }
        roster.requirePassword(person, password);
        if (known.isEmpty()) {
            roster.admit("", person, "", Role.LEAD);
        }
        roster.setPassword("", person, password);
    }

    /** Changes one's own password; the old one must be right, and tries are slowed like those at the door. */
    public void changePassword(Actor actor, String before, String password) {
        String from = "sign-in " + actor.signIn();
        signIns.requireTry(from);
        if (!roster.isPassword(actor.person(), before)) {
            throw signIns.wrong(from, actor.person(), "The old password is not right.");
        }
        roster.changePassword(actor, password);
        signIns.rightFrom(from);
    }

    /** Sets one's own PIN; where there is one, the old one must be right. */
    public void changePin(Actor actor, String before, String pin) {
        String from = "sign-in " + actor.signIn();
        signIns.requireTry(from);
        if (!roster.isPin(actor.person(), before)) {
            throw signIns.wrong(from, actor.person(), "The old PIN is not right.");
        }
        roster.setPin(actor.person(), actor.person(), pin);
        signIns.rightFrom(from);
    }

    /** The machine's time, to the minute: sign-ins and devices are told by it, not by a demonstration's clock. */
    public Instant minute() {
        return machine.instant().truncatedTo(ChronoUnit.MINUTES);
    }

    /** Refuses a visitor who comes too soon after too many others. */
    public void requireVisit(String from) {
        visits.require(from);
    }

    /** A refusal of somebody or something that is not known. */
    public DeniedException notKnown(String sentence) {
        return DeniedException.of(sentence);
    }

    /** Tells the record that somebody tried what they may not. */
    public void refused(Actor actor, Act act, String what) {
        refused(actor.person(), actor.role(), act, what);
    }

    private void refused(String person, Role role, Act act, String what) {
        try {
            refusals.require(person);
        } catch (DeniedException e) {
            // refused all the same; entering each of a flood would let a sender fill the record
            return;
        }
        notices.tell(EntryKind.ACT_REFUSED, person, "act", act.key(), "role", role.word(), "what", what);
    }
}
