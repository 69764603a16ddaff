package fayline.app.web.journal;

import fayline.app.web.frame.Sight;
import fayline.flow.project.local.LocalStage;
import fayline.flow.record.EntryKind;
import fayline.flow.record.inspect.FoundFault;
import fayline.flow.record.inspect.InspectState;
import fayline.flow.record.payload.Photo;
import fayline.flow.record.payload.Value;

/** What entries about visits and findings say. */
final class InspectSentences {
    private InspectSentences() {}

    static String of(EntryKind kind, Value.Fields f, Sight sight, InspectState state) {
        String which = state.fault(f.whole("finding").orElse(0L))
                .map(FoundFault::number)
                .orElse("of entry " + f.whole("finding").orElse(0L));
        return switch (kind) {
            case VISIT_HELD ->
                (f.text("own").equals("yes")
                                ? "looked"
                                : "visit " + f.whole("number").orElse(0L) + ", " + f.text("who"))
                        + (f.text("stage").isEmpty() ? "" : " at " + stage(f, sight))
                        + photos(f)
                        + text(f);
            case FINDING_RAISED ->
                "finding " + f.text("number") + " on "
                        + sight.madeName(f.text("about").replaceFirst("^[^/]*/", "")) + text(f);
            case FINDING_CORRECTED -> "put finding " + which + " right" + photos(f) + text(f);
            default ->
                (f.text("accepted").equals("no") ? "did not accept finding " : "accepted finding ")
                        + which
                        + (f.text("who").isEmpty() ? "" : ", signed by " + f.text("who"))
                        + text(f);
        };
    }

    private static String stage(Value.Fields f, Sight sight) {
        return sight.definition()
                .local()
                .stage(f.text("stage"))
                .map(LocalStage::name)
                .orElse(f.text("stage"));
    }

    private static String photos(Value.Fields f) {
        int n = Photo.allOf(f).size();
        return n == 0 ? "" : n == 1 ? ", one photo" : ", " + n + " photos";
    }

    private static String text(Value.Fields f) {
        return f.text("text").isEmpty() ? "" : ": " + EntryWords.shortened(f.text("text"));
    }
}
