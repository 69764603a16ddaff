package fayline.app.web.frame;

import io.javalin.config.RoutesConfig;

/** A feature's pages and forms. */
public interface Page {
    /** Adds the addresses it answers. */
    void addTo(RoutesConfig routes);

    /** Ends what goes on beside its answers, before the program stops. */
    default void end() {
        // most pages answer and are done
    }
}
