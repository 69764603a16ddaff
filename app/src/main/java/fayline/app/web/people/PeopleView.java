package fayline.app.web.people;

import java.util.List;

/**
 * The page of people, devices and sign-ins.
 *
 * @param refused why the last try was refused; empty for nothing
 * @param people who may enter
 * @param addable who of the shop's list may not enter yet
 * @param devices known devices
 * @param signIns who is signed in now
 * @param told the last entries about people, the newest first
 * @param roles the roles
 * @param table who may do what
 * @param address the address that others open
 * @param code its code as a drawing
 */
public record PeopleView(
        List<String> refused,
        List<Person> people,
        List<Person> addable,
        List<Device> devices,
        List<SignIn> signIns,
        List<Told> told,
        List<String> roles,
        List<Right> table,
        String address,
        String code) {
    /** Copies the lists. */
    public PeopleView {
        refused = List.copyOf(refused);
        people = List.copyOf(people);
        addable = List.copyOf(addable);
        devices = List.copyOf(devices);
        signIns = List.copyOf(signIns);
        told = List.copyOf(told);
        roles = List.copyOf(roles);
        table = List.copyOf(table);
    }

    /**
     * Somebody.
     *
     * @param id the id
     * @param name what people call them
     * @param role the role's word; empty where they may not enter
     * @param secrets which secrets are set, in words
     */
    public record Person(String id, String name, String role, String secrets) {}

    /**
     * A known device.
     *
     * @param id the id
     * @param label what it is called
     * @param whose whose it is, in words
     * @param since since when it is known
     */
    public record Device(String id, String label, String whose, String since) {}

    /**
     * A sign-in that holds.
     *
     * @param id the id
     * @param who who
     * @param how how and where, in words
     * @param since since when
     * @param seen the last request
     * @param here whether it is this very one
     */
    public record SignIn(String id, String who, String how, String since, String seen, boolean here) {}

    /**
     * An entry about people.
     *
     * @param when when
     * @param what what, in words
     * @param entry its number
     */
    public record Told(String when, String what, long entry) {}

    /**
     * A row of the table of rights.
     *
     * @param act the act, in words
     * @param who the roles that may
     */
    public record Right(String act, List<String> who) {
        /** Copies the list. */
        public Right {
            who = List.copyOf(who);
        }
    }
}
