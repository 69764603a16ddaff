package fayline.app.usecase.act;

import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.project.Definition;
import fayline.flow.project.shop.Person;
import fayline.flow.project.shop.Skill;
import java.util.List;

/**
 * Who may decide and sign. On a network the role of who is signed in says so, and every entry is judged by it; on a machine
 * without accounts the crew list does, and a name is picked and not proven.
 */
public final class Signers {
    private Signers() {}

    /** The people whom the crew list lets sign. */
    public static List<Person> all(Definition d) {
        return d.shop().people().stream()
                .filter(p -> p.skills().contains(Skill.SIGN))
                .toList();
    }

    /** Whether the crew list lets somebody sign. */
    public static boolean isOne(Definition d, String person) {
        return all(d).stream().anyMatch(p -> p.id().equals(person));
    }

    /** Checks that somebody may decide; where a role says so, nothing is to be checked here. */
    public static void check(ShopRecord shop, Definition d, Checks checks, String field, String person) {
        if (!shop.isJudged() && !isOne(d, person)) {
            checks.stop(
                    field,
                    person + " decides",
                    "somebody whom the crew list lets sign: "
                            + String.join(
                                    ", ", all(d).stream().map(Person::name).toList()),
                    "let one of them decide");
        }
    }
}
