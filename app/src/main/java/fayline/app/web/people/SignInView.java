package fayline.app.web.people;

import java.util.List;

/**
 * The page at the door.
 *
 * @param fresh whether there is no lead yet
 * @param device what this device is called; empty where it is not known
 * @param here who may enter on it by PIN
 * @param back where to go afterwards
 * @param chosen who was picked last
 */
public record SignInView(boolean fresh, String device, List<Person> here, String back, String chosen) {
    /** Copies the list. */
    public SignInView {
        here = List.copyOf(here);
    }

    /**
     * Somebody to pick.
     *
     * @param id the id
     * @param name what people call them
     */
    public record Person(String id, String name) {}
}
