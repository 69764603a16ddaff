package fayline.app.usecase.act;

import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.project.Definition;
import java.time.Instant;
import java.util.Optional;

/** What every act upon a project begins with: the project is there, somebody of the crew sends it, and it has not yet to come. */
@FunctionalInterface
public interface ProjectDeed {
    /**
     * Checks what is its own and appends.
     *
     * @param definition the project's definition
     * @param checks holds what is wrong so far, and takes more
     * @param when when it happened
     */
    Outcome of(Definition definition, Checks checks, Instant when);

    /**
     * Decides, with nobody else deciding meanwhile.
     *
     * @param shop the record to add to
     * @param sent who sends it under which id
     * @param project the project
     * @param at when; now where nothing is said
     * @param deed the act itself
     */
    static Outcome decide(ShopRecord shop, Sent sent, String project, Optional<Instant> at, ProjectDeed deed) {
        return shop.deciding(() -> {
            Optional<Definition> definition = shop.definition(project);
            if (definition.isEmpty()) {
                return Outcome.refused("The project " + project + " is not in this shop.");
            }
            Instant when = at.orElseGet(() -> shop.timeOf(sent));
            Checks checks = new Checks(definition.get());
            checks.person("by", sent.by());
            checks.time(sent, when, shop.now());
            return deed.of(definition.get(), checks, when);
        });
    }
}
