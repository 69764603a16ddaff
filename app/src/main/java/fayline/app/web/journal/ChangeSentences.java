package fayline.app.web.journal;

import fayline.app.web.frame.Sight;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.change.Change;
import fayline.flow.record.change.Treatment;
import fayline.flow.record.payload.Value;
import java.util.List;
import java.util.Optional;

/** Entries about changes of the design, in a sentence each. */
final class ChangeSentences {
    /** The kinds about changes. */
    static final List<String> KINDS = List.of(
            EntryKind.CHANGE_RAISED.key(),
            EntryKind.CHANGE_DECIDED.key(),
            EntryKind.CHANGE_SETTLED.key(),
            EntryKind.CHANGE_CLOSED.key());

    private ChangeSentences() {}

    static String of(Entry e, EntryKind kind, Sight sight) {
        Value.Fields f = e.fields();
        Optional<Change> of =
                f.whole("change").flatMap(c -> sight.view().record().change().find(c));
        String name = of.map(Change::name).orElse("entry " + f.whole("change").orElse(0L));
        return switch (kind) {
            case CHANGE_RAISED ->
                "raised change " + f.text("number") + (f.text("structural").isEmpty() ? "" : ", structure touched")
                        + ": " + EntryWords.shortened(f.text("what"));
            case CHANGE_DECIDED -> decided(e, f, name, sight);
            case CHANGE_SETTLED ->
                "change " + name + ", " + thing(f.text("item"), sight) + ": "
                        + Treatment.of(f.text("how")).map(Treatment::words).orElse(f.text("how"))
                        + (f.text("drawing").isEmpty() ? "" : ", drawing " + f.text("drawing"))
                        + (f.text("note").isEmpty() ? "" : ". " + EntryWords.shortened(f.text("note")));
            default ->
                "closed change " + name + (f.text("note").isEmpty() ? "" : ". " + EntryWords.shortened(f.text("note")));
        };
    }

    private static String decided(Entry e, Value.Fields f, String name, Sight sight) {
        String what = f.text("decision").equals("accepted") ? "accepted" : "refused";
        if (f.text("second").equals(e.by())) {
            return "agreed as second person that change " + name + " is " + what;
        }
        return what + " change " + name
                + (f.text("second").isEmpty() ? "" : ", " + sight.personName(f.text("second")) + " agreeing")
                + (f.text("note").isEmpty() ? "" : ". " + EntryWords.shortened(f.text("note")));
    }

    private static String thing(String item, Sight sight) {
        int at = item.indexOf('/');
        return item.substring(0, Math.max(0, at)) + " " + sight.named(item.substring(at + 1));
    }
}
