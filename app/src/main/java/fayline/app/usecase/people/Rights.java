package fayline.app.usecase.people;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/** The one table of who may do what. What is not in it is not allowed. */
public final class Rights {
    private static final Map<Role, Set<Act>> TABLE = table();

    private Rights() {}

    private static Map<Role, Set<Act>> table() {
        Map<Role, Set<Act>> t = new EnumMap<>(Role.class);
        t.put(Role.LEAD, EnumSet.allOf(Act.class));
        t.put(Role.CREW, EnumSet.of(Act.SEE, Act.WORK, Act.SIGN, Act.INSPECT, Act.RAISE_CHANGE, Act.KEEP_SELF));
        t.put(Role.INSPECTOR, EnumSet.of(Act.SEE, Act.SIGN, Act.INSPECT, Act.PRINT_SHEET, Act.KEEP_SELF));
        t.put(Role.VIEWER, EnumSet.of(Act.SEE, Act.KEEP_SELF));
        return Collections.unmodifiableMap(t);
    }

    /**
     * Whether a role may do something. Signing a hold point asks more: the shop's own list of people must let the person sign,
     * and nobody signs for another.
     */
    public static boolean may(Role role, Act act) {
        return TABLE.getOrDefault(role, Set.of()).contains(act);
    }

    /** The same for somebody at a screen: who may enter is said with a password only, not by PIN or from a phone in a pocket. */
    public static boolean may(Actor actor, Act act) {
        return may(actor.role(), act) && (act != Act.KEEP_PEOPLE || actor.way() == Way.PASSWORD);
    }
}
