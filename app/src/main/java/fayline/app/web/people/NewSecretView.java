package fayline.app.web.people;

import java.util.List;

/**
 * The page on which a secret is set by a code.
 *
 * @param person whose it is; empty where the lead is picked
 * @param name what people call them
 * @param password whether it is a password, not a PIN
 * @param crew whom to pick the lead from; empty where nobody is picked
 * @param rules the rules, a sentence each
 */
public record NewSecretView(
        String person, String name, boolean password, List<SignInView.Person> crew, List<String> rules) {
    /** Copies the lists. */
    public NewSecretView {
        crew = List.copyOf(crew);
        rules = List.copyOf(rules);
    }
}
