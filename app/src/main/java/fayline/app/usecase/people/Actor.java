package fayline.app.usecase.people;

/**
 * Who is at a screen, as the sign-in says.
 *
 * @param person the id
 * @param name what people call them
 * @param role what they are in the shop
 * @param way how they signed in
 * @param signIn id of the sign-in
 * @param device id of the known device; empty for none
 */
public record Actor(String person, String name, Role role, Way way, String signIn, String device) {

    /** Whether the table lets them. */
    public boolean may(Act act) {
        return Rights.may(this, act);
    }
}
