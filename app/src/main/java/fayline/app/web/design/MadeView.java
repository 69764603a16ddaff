package fayline.app.web.design;

import fayline.app.web.change.ChangeViews;
import fayline.app.web.frame.StateWord;
import java.util.List;

/**
 * What the page of a part or joint shows.
 *
 * @param id its id
 * @param name its name
 * @param kind {@code part} or {@code joint}
 * @param facts what is known of it, as pairs
 * @param zones zones with their drawings
 * @param massBar mass against target, drawn; empty where there is no target
 * @param needs what it draws from the stores
 * @param figures figures that can be asked why
 * @param steps its steps in order
 * @param lessons what earlier parts taught
 * @param findings what the computation says
 * @param changes changes of the design that make it otherwise
 */
public record MadeView(
        String id,
        String name,
        String kind,
        List<Fact> facts,
        List<Zone> zones,
        String massBar,
        List<Need> needs,
        List<Asked> figures,
        List<Step> steps,
        List<String> lessons,
        List<String> findings,
        List<ChangeViews.Mention> changes) {
    /** Copies the lists. */
    public MadeView {
        facts = List.copyOf(facts);
        zones = List.copyOf(zones);
        needs = List.copyOf(needs);
        figures = List.copyOf(figures);
        steps = List.copyOf(steps);
        lessons = List.copyOf(lessons);
        findings = List.copyOf(findings);
        changes = List.copyOf(changes);
    }

    /**
     * A fact.
     *
     * @param name what
     * @param value how much
     * @param link a page about it; empty for none
     */
    public record Fact(String name, String value, String link) {}

    /**
     * A zone.
     *
     * @param name its name
     * @param laminate the laminate's name
     * @param facts its measures
     * @param outline its drawing
     * @param stack its plies drawn
     */
    public record Zone(String name, String laminate, List<Fact> facts, String outline, String stack) {
        /** Copies the list. */
        public Zone {
            facts = List.copyOf(facts);
        }
    }

    /**
     * A need.
     *
     * @param what the thing
     * @param amount how much
     * @param purpose what for
     * @param cost its cost; empty where no price is known
     */
    public record Need(String what, String amount, String purpose, String cost) {}

    /**
     * A figure.
     *
     * @param name what it is
     * @param value its value
     * @param link where it says why
     */
    public record Asked(String name, String value, String link) {}

    /**
     * A step.
     *
     * @param title the title
     * @param link its card
     * @param state how far it is
     * @param when when, in words
     * @param who who
     * @param hands hands-on time
     * @param waits what it waits for
     */
    public record Step(
            String title, String link, StateWord state, String when, String who, String hands, List<String> waits) {
        /** Copies the list. */
        public Step {
            waits = List.copyOf(waits);
        }
    }
}
