package fayline.app.web.frame;

import fayline.app.usecase.people.Act;
import io.javalin.security.RouteRole;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What an address asks of who comes to it, said once where the address is added: any one of these acts must be allowed. An
 * address that is only read and says nothing asks {@link Act#SEE}; one that changes something and says nothing is open to
 * nobody while people are known.
 *
 * @param anyOf the acts
 */
public record Asks(Set<Act> anyOf) implements RouteRole {
    /** Copies the set. */
    public Asks {
        anyOf = Set.copyOf(anyOf);
    }

    /** Asks nothing: the door itself, open to visitors whom nobody knows. */
    public static final Asks NOTHING = new Asks(Set.of());

    /** Asks for one of these acts. */
    public static Asks to(Act... acts) {
        return new Asks(Set.copyOf(List.of(acts)));
    }

    /** The acts in their order. */
    public List<Act> inOrder() {
        return List.copyOf(new TreeSet<>(anyOf));
    }
}
