package fayline.app.usecase.change;

import fayline.app.usecase.act.Checks;
import fayline.app.usecase.act.ProjectDeed;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.project.Definition;
import fayline.flow.record.EntryKind;
import fayline.flow.record.payload.Value;
import fayline.flow.result.change.Touch;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Somebody asks for an alteration of the design, and says what it alters and why. */
public final class RaiseChange {
    private final ShopRecord shop;

    /** On a shop's record. */
    public RaiseChange(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * What is asked for.
     *
     * @param number its name in the project, as {@code C-07}; the next free one where it is empty
     * @param what what is to be otherwise
     * @param why why
     * @param touches what it alters, as {@code sort/id}
     * @param structural whether structure is touched
     */
    public record Raised(String number, String what, String why, List<String> touches, boolean structural) {
        /** Copies the list. */
        public Raised {
            touches = List.copyOf(touches);
        }
    }

    /**
     * Records it.
     *
     * @param sent who sends it under which id
     * @param project the project
     * @param raised what is asked for
     * @param at when, on a whole minute; now where nothing is said
     */
    public Outcome raise(Sent sent, String project, Raised raised, Optional<Instant> at) {
        return ProjectDeed.decide(shop, sent, project, at, (definition, checks, when) -> {
            String number = number(sent, project, raised);
            check(checks, definition, sent, project, raised, number);
            if (!checks.problems().isEmpty()) {
                return Outcome.refused("The change was not recorded.", checks.problems());
            }
            return shop.append(Checks.entry(
                    shop,
                    sent,
                    project,
                    EntryKind.CHANGE_RAISED,
                    Value.Fields.NONE
                            .with("number", number)
                            .with("at", when.toString())
                            .with("what", raised.what())
                            .with("why", raised.why())
                            .with("touches", raised.touches())
                            .withUnlessEmpty("structural", raised.structural() ? "yes" : "")));
        });
    }

    /** What is sent twice keeps the name that it got. */
    private String number(Sent sent, String project, Raised raised) {
        if (!raised.number().isEmpty()) {
            return raised.number();
        }
        return shop.seqOf(sent.client())
                .flatMap(seq -> shop.state().change().find(seq))
                .map(c -> c.name())
                .orElseGet(() -> shop.state().change().nextName(project));
    }

    private void check(Checks checks, Definition d, Sent sent, String project, Raised raised, String number) {
        if (!number.matches("[A-Za-z0-9][A-Za-z0-9.-]{0,19}")) {
            checks.stop("number", "\"" + number + "\"", "letters, digits, hyphens, at most 20, such as C-07", "");
        } else if (!shop.knows(sent.client())
                && shop.state().change().find(project, number).isPresent()) {
            checks.stop("number", number + ", which another change has", "one that is free", "");
        }
        checks.text("what", raised.what(), true);
        checks.text("why", raised.why(), true);
        if (raised.touches().isEmpty()) {
            checks.stop("touches", "nothing", "at least one thing that it alters", "tick what is altered");
        }
        for (String key : raised.touches()) {
            // A definition that has moved on may no longer hold what an old change altered.
            if (Touch.of(key).filter(t -> !sent.live() || t.isIn(d)).isEmpty()) {
                checks.stop(
                        "touches",
                        "\"" + key + "\"",
                        "something of the definition, such as part/"
                                + d.parts().stream()
                                        .findFirst()
                                        .map(p -> p.id())
                                        .orElse("wing-skin"),
                        "");
            }
        }
    }
}
