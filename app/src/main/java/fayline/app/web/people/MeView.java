package fayline.app.web.people;

import java.util.List;

/**
 * One's own page.
 *
 * @param refused why the last try was refused; empty for nothing
 * @param name what people call them
 * @param role the role's word
 * @param how how they signed in, in words
 * @param may what they may, in words
 * @param password whether a password is set
 * @param pin whether a PIN is set
 * @param shared whether this is a device that several share
 * @param devices one's own devices
 * @param signIns one's own sign-ins
 * @param passwordRules the rules for a password
 * @param pinRules the rules for a PIN
 */
public record MeView(
        List<String> refused,
        String name,
        String role,
        String how,
        List<String> may,
        boolean password,
        boolean pin,
        boolean shared,
        List<PeopleView.Device> devices,
        List<PeopleView.SignIn> signIns,
        List<String> passwordRules,
        List<String> pinRules) {
    /** Copies the lists. */
    public MeView {
        refused = List.copyOf(refused);
        may = List.copyOf(may);
        devices = List.copyOf(devices);
        signIns = List.copyOf(signIns);
        passwordRules = List.copyOf(passwordRules);
        pinRules = List.copyOf(pinRules);
    }
}
