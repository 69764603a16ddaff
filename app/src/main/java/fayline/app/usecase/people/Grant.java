package fayline.app.usecase.people;

/** What a one-time code allows, once. */
public sealed interface Grant {
    /** Whether it was issued for somebody. */
    default boolean isFor(String person) {
        return false;
    }

    /** Whoever is at the console makes the lead, or gives the lead a new password. */
    record SetUp() implements Grant {}

    /**
     * A phone, tablet or desk machine becomes known.
     *
     * @param person whose it is; empty where several share it
     * @param label what it is called
     * @param by who issued the code
     */
    record Pairing(String person, String label, String by) implements Grant {
        @Override
        public boolean isFor(String other) {
            return person.equals(other);
        }

        /** Whether several share it. */
        public boolean isShared() {
            return person.isEmpty();
        }
    }

    /**
     * Somebody sets a first or new secret: a lead the password, others the PIN.
     *
     * @param person who
     */
    record NewSecret(String person) implements Grant {
        @Override
        public boolean isFor(String other) {
            return person.equals(other);
        }
    }
}
