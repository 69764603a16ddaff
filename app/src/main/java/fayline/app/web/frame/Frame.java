package fayline.app.web.frame;

import fayline.app.usecase.people.Act;
import fayline.app.usecase.people.Actor;
import java.util.List;
import java.util.Optional;

/**
 * What stands around a page.
 *
 * @param title the page's title
 * @param here the address of the page in the list of pages, as {@code /weeks}; empty where it is none of them
 * @param shop the shop's name
 * @param project the project shown, as people call it
 * @param projects all projects
 * @param person who is at the screen; empty while nobody said so
 * @param people the crew
 * @param demo whether the project is a demonstration
 * @param nowIso the shop's time, for the clocks on the page
 * @param nowWords the same in words
 * @param csrf the session's token
 * @param once the number under which a form's entry is made, so that sending it twice makes one
 * @param theme {@code machine}, {@code day} or {@code night}
 * @param density {@code fitting}, {@code desk} or {@code bench}
 * @param inch whether inch units are shown
 * @param path the address of this very page, to come back to
 * @param said what was just done, to be confirmed on the page; empty for nothing
 * @param draft the form whose typed text may be forgotten now; empty for none
 * @param version the program's version
 * @param follows how the page follows the record
 * @param actor who is signed in; empty where the program serves this machine alone
 */
public record Frame(
        String title,
        String here,
        String shop,
        String project,
        List<Choice> projects,
        String person,
        List<Choice> people,
        boolean demo,
        String nowIso,
        String nowWords,
        String csrf,
        String once,
        String theme,
        String density,
        boolean inch,
        String path,
        String said,
        String draft,
        String version,
        Following follows,
        Optional<Actor> actor) {
    /** Copies the lists. */
    public Frame {
        projects = List.copyOf(projects);
        people = List.copyOf(people);
    }

    /** Whether people are known by account; then a form does not ask who sends it. */
    public boolean known() {
        return actor.isPresent();
    }

    /** Whether who is here may do something. */
    public boolean may(Act act) {
        return actor.map(a -> a.may(act)).orElse(true);
    }

    /** Whether work and readings may be entered. */
    public boolean mayWork() {
        return may(Act.WORK);
    }

    /** Whether a hold point may be signed, as far as the role says. */
    public boolean maySign() {
        return may(Act.SIGN);
    }

    /** Whether the definition may be changed. */
    public boolean mayChange() {
        return may(Act.CHANGE_DEFINITION);
    }

    /** Whether a plan may be searched for and told. */
    public boolean maySettle() {
        return may(Act.PUBLISH_PLAN);
    }

    /** The id of who is at the screen, where they are of the crew; empty while nobody said so. */
    public String personId() {
        return people.stream()
                .filter(Choice::chosen)
                .map(Choice::id)
                .findFirst()
                .orElse("");
    }

    /** The id of the project shown; empty for none. */
    public String projectId() {
        return projects.stream()
                .filter(Choice::chosen)
                .map(Choice::id)
                .findFirst()
                .orElse("");
    }

    /** Whether one of the pages is this one. */
    public boolean at(String page) {
        return here.equals(page);
    }

    /**
     * One of several.
     *
     * @param id its id
     * @param name what people call it
     * @param chosen whether it is the one
     */
    public record Choice(String id, String name, boolean chosen) {}
}
