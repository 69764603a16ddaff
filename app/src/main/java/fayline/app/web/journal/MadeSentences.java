package fayline.app.web.journal;

import fayline.app.web.frame.Sight;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.payload.Photo;
import fayline.flow.record.payload.Value;
import fayline.flow.record.trouble.Disposition;
import fayline.flow.record.trouble.Rework;
import java.util.List;
import java.util.function.Function;

/** Entries about what went into a step and about deviations, in a sentence each. */
final class MadeSentences {
    /** The kinds that are of a step. */
    static final List<String> OF_STEP =
            List.of(EntryKind.LOT_DRAWN.key(), EntryKind.MIX_MADE.key(), EntryKind.PLY_LAID.key());

    private MadeSentences() {}

    static String of(Entry e, EntryKind kind, Function<Value.Fields, String> step, Sight sight) {
        Value.Fields f = e.fields();
        return switch (kind) {
            case LOT_DRAWN ->
                "drew " + (f.text("amount").isEmpty() ? "" : f.text("amount") + " of ") + "lot " + f.text("lot")
                        + " for " + step.apply(f)
                        + (f.text("override").isEmpty() ? "" : ", out of date, allowed: " + f.text("why"));
            case MIX_MADE -> mix(f) + " for " + step.apply(f);
            case PLY_LAID ->
                (f.text("skipped").isEmpty() ? "laid ply " : "left out ply ") + f.text("ply")
                        + (f.text("name").isEmpty() ? "" : " (" + f.text("name") + ")") + " of " + step.apply(f)
                        + (f.text("lot").isEmpty() ? "" : ", lot " + f.text("lot"))
                        + (f.text("why").isEmpty() ? "" : ": " + f.text("why"));
            case DEVIATION_RAISED -> {
                int photos = Photo.allOf(f).size();
                yield "raised a deviation on " + about(f, sight)
                        + (f.text("structural").isEmpty() ? "" : ", structure touched")
                        + (f.text("text").isEmpty() ? "" : ": " + EntryWords.shortened(f.text("text")))
                        + (photos == 0 ? "" : photos == 1 ? ", one photo" : ", " + photos + " photos");
            }
            default -> settled(e, f, sight);
        };
    }

    private static String mix(Value.Fields f) {
        String batch = f.text("batch").isEmpty() ? "a batch" : "batch " + f.text("batch");
        return "mixed " + batch + " of " + f.text("system")
                + (f.text("weighed").equals("yes")
                        ? ", " + f.text("resin") + " and " + f.text("hardener")
                        : ", no scale reading");
    }

    private static String about(Value.Fields f, Sight sight) {
        String about = f.text("about");
        String[] bits = about.split("/", -1);
        return bits.length == 4
                ? sight.stepName(about)
                : sight.made(bits[bits.length - 1]).map(m -> m.name()).orElse(about);
    }

    private static String settled(Entry e, Value.Fields f, Sight sight) {
        String what =
                Disposition.of(f.text("disposition")).map(Disposition::words).orElse(f.text("disposition"));
        String which = " deviation " + f.whole("deviation").orElse(0L);
        if (f.text("second").equals(e.by())) {
            return "agreed as second person on" + which + ": " + what;
        }
        int rework = Rework.allOf(f).size();
        return "decided about" + which + ": " + what
                + (rework == 0 ? "" : ", " + rework + (rework == 1 ? " piece of work" : " pieces of work"))
                + (f.text("second").isEmpty() ? "" : ", " + sight.personName(f.text("second")) + " agreeing")
                + (f.text("note").isEmpty() ? "" : ". " + EntryWords.shortened(f.text("note")));
    }
}
