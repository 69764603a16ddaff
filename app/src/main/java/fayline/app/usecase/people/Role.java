package fayline.app.usecase.people;

import java.util.Locale;
import java.util.Optional;

/** What somebody is in the shop; what each may is in {@link Rights}. */
public enum Role {
    /** Leads the build: plans, decides, says who may enter. */
    LEAD("lead"),
    /** Works at the bench. */
    CREW("crew"),
    /** Looks at the work and signs hold points. */
    INSPECTOR("inspector"),
    /** Looks on. */
    VIEWER("viewer");

    private final String word;

    Role(String word) {
        this.word = word;
    }

    /** The word on pages, in entries and in the database. */
    public String word() {
        return word;
    }

    /** The role of a word. */
    public static Optional<Role> of(String word) {
        for (Role role : values()) {
            if (role.word.equals(word.toLowerCase(Locale.ROOT))) {
                return Optional.of(role);
            }
        }
        return Optional.empty();
    }
}
