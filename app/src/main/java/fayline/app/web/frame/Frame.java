package fayline.app.web.frame;

import java.util.List;

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
        String version) {
    /** Copies the lists. */
    public Frame {
        projects = List.copyOf(projects);
        people = List.copyOf(people);
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
