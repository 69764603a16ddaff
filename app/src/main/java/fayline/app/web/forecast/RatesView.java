package fayline.app.web.forecast;

import java.util.List;

/**
 * What the shop's times teach.
 *
 * @param kinds by kind of work
 * @param people by person
 * @param works every finished step that counts, the newest last
 * @param leftOut times that cannot be right
 * @param scatter how far one step strays, in words
 */
public record RatesView(List<Kind> kinds, List<Who> people, List<Done> works, List<Done> leftOut, String scatter) {
    /** Copies the lists. */
    public RatesView {
        kinds = List.copyOf(kinds);
        people = List.copyOf(people);
        works = List.copyOf(works);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * A kind of work.
     *
     * @param name the kind
     * @param works how many steps
     * @param estimated hours by the recipes
     * @param booked hours booked
     * @param factor the learned factor
     * @param range four in five
     * @param repetition what repetition brings, empty for nothing clear
     */
    public record Kind(
            String name, int works, String estimated, String booked, String factor, String range, String repetition) {}

    /**
     * A person.
     *
     * @param name the person
     * @param works how many steps
     * @param factor against the crew
     * @param range four in five
     */
    public record Who(String name, int works, String factor, String range) {}

    /**
     * A finished step.
     *
     * @param name the step
     * @param link its card
     * @param estimated person-minutes by the recipe
     * @param booked person-minutes booked
     * @param ratio booked over estimated
     */
    public record Done(String name, String link, String estimated, String booked, String ratio) {}
}
