package fayline.app.web.kept;

import fayline.app.usecase.shop.Outcome;
import fayline.app.web.frame.Answers;
import fayline.flow.record.payload.Value;

/**
 * What became of one kept form.
 *
 * @param id the form's number
 * @param what {@code taken}, {@code there}, {@code refused} or {@code unknown}
 * @param seq its place in the record; 0 where it has none
 * @param say what happened, in sentences
 */
record KeptAnswer(String id, String what, long seq, String say) {
    static KeptAnswer of(KeptForm form, Outcome outcome) {
        return switch (outcome.kind()) {
            case RECORDED -> new KeptAnswer(form.id(), "taken", outcome.seq(), Answers.said(outcome));
            case ALREADY -> new KeptAnswer(form.id(), "there", outcome.seq(), Answers.said(outcome));
            case UNKNOWN -> unknown(form, String.join(" ", Answers.refused(outcome)));
            case REFUSED, NOTHING -> refused(form, String.join(" ", Answers.refused(outcome)));
        };
    }

    static KeptAnswer refused(KeptForm form, String why) {
        return new KeptAnswer(form.id(), "refused", 0, why);
    }

    static KeptAnswer unknown(KeptForm form, String why) {
        return new KeptAnswer(form.id(), "unknown", 0, why);
    }

    Value.Fields value() {
        return Value.Fields.NONE
                .with("id", id)
                .with("what", what)
                .with("seq", seq)
                .with("say", say);
    }
}
