package fayline.app.web.people;

import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.payload.Value;
import java.util.function.UnaryOperator;

/** What an entry about people says, without who made it. */
public final class PeopleSentences {
    private PeopleSentences() {}

    /**
     * The sentence.
     *
     * @param e the entry
     * @param kind its kind, one about people
     * @param name what people call somebody
     */
    public static String of(Entry e, EntryKind kind, UnaryOperator<String> name) {
        Value.Fields f = e.fields();
        String who = name.apply(f.text("person"));
        return switch (kind) {
            case PERSON_ADMITTED -> f.text("name") + " may enter as " + f.text("role");
            case PERSON_CHANGED -> who + ": " + changed(f);
            case DEVICE_PAIRED -> "device \"" + f.text("label") + "\" paired";
            case DEVICE_ENDED -> "device \"" + f.text("label") + "\" ended: " + f.text("why");
            case SIGNED_IN -> who + " signed in by " + f.text("way") + after(f);
            case SIGNED_OUT -> who + " signed out: " + f.text("why");
            case SIGN_IN_BARRED -> f.text("tries") + " wrong tries from " + f.text("from") + ", barred for a while";
            case ACT_REFUSED -> "was refused: " + f.text("act") + ", " + f.text("what");
            default -> e.kind();
        };
    }

    private static String changed(Value.Fields f) {
        return switch (f.text("what")) {
            case "role" -> "is " + f.text("role") + " now";
            case "removed" -> "may no longer enter";
            case "password" -> "new password";
            case "pin" -> "new PIN";
            default -> f.text("what");
        };
    }

    private static String after(Value.Fields f) {
        return f.text("tries").isEmpty() ? "" : " after " + f.text("tries") + " wrong tries";
    }
}
