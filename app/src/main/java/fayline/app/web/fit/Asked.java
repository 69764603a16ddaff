package fayline.app.web.fit;

import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import io.javalin.config.RoutesConfig;
import java.util.Optional;
import java.util.function.Function;

/**
 * The address of an answer about fits: finds what is asked for by its id, with or without the usual uncertainties assumed, and
 * shows it.
 *
 * @param what what is asked for, as a refusal names it
 * @param address its address, with {@code {id}}
 * @param template what shows it
 * @param look finds it
 * @param name names it
 * @param words words it
 * @param <T> what is found
 */
public record Asked<T>(
        String what, String address, String template, Look<T> look, Function<T, String> name, Words<T> words) {
    /** Finds an answer. */
    public interface Look<T> {
        /** Finds it by its id; with uncertainties that nobody gave assumed, if so asked. */
        Optional<T> of(Sight sight, String id, boolean assume);
    }

    /** Words an answer. */
    public interface Words<T> {
        /** What the template shows to this visit. */
        Object of(Sight sight, T found, Visit visit);
    }

    /** Whether a visit asks for uncertainties that nobody gave to be assumed. */
    public static boolean assumes(Visit visit) {
        return visit.query("assume").equals("yes");
    }

    /** Adds the address. */
    public void addTo(RoutesConfig routes, Sights sights) {
        routes.get(address, ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> {
                T found = look.of(sight, visit.inPath("id"), assumes(visit)).orElseThrow(() -> Refusal.absent(what));
                sights.show(
                        visit,
                        template,
                        sights.frame(visit, sight, name.apply(found), "/fits"),
                        words.of(sight, found, visit));
            });
        });
    }
}
