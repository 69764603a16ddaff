package fayline.app.usecase.act;

import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.project.Definition;
import fayline.flow.record.EntryFiles;
import fayline.flow.record.EntryKind;
import fayline.flow.record.NewEntry;
import fayline.flow.record.payload.Photo;
import fayline.flow.record.payload.Value;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** A note on a step, kept as typed, and the pictures that go with it. */
public final class NoteStep {
    private static final String REFUSED = "The note was not recorded.";
    private final ShopRecord shop;

    /** On a shop's record. */
    public NoteStep(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * Records a note.
     *
     * @param sent who sends it under which id
     * @param step the step
     * @param text the note
     * @param at when, on a whole minute; now where nothing is said
     */
    public Outcome note(Sent sent, String step, String text, Optional<Instant> at) {
        return told(sent, step, text, List.of(), at);
    }

    /**
     * Records a note with pictures. Each file is kept, once however often it is sent, before the entry that names it.
     *
     * @param sent who sends it under which id
     * @param step the step
     * @param text the note; may be empty where there are pictures
     * @param pictures the pictures as they were sent
     * @param at when, on a whole minute; now where nothing is said
     */
    public Outcome note(Sent sent, String step, String text, List<SentPicture> pictures, Optional<Instant> at) {
        SentPictures read = SentPictures.of(pictures, shop, sent);
        if (!read.problems().isEmpty()) {
            return Outcome.refused(REFUSED, read.problems());
        }
        Outcome outcome = record(sent, step, text, read.photos(), read.files(), at);
        return outcome.kind() == Outcome.Kind.RECORDED && !read.leftOut().isEmpty()
                ? outcome.saying(String.join(" ", read.leftOut()))
                : outcome;
    }

    /**
     * Records a note whose pictures are among the shop's files already.
     *
     * @param sent who sends it under which id
     * @param step the step
     * @param text the note; may be empty where there are pictures
     * @param photos the pictures
     * @param at when, on a whole minute; now where nothing is said
     */
    public Outcome told(Sent sent, String step, String text, List<Photo> photos, Optional<Instant> at) {
        return record(sent, step, text, photos, List.of(), at);
    }

    private Outcome record(
            Sent sent, String step, String text, List<Photo> photos, List<byte[]> files, Optional<Instant> at) {
        return shop.deciding(() -> {
            Optional<Definition> definition = shop.definitionWith(StartStep.project(step), StartStep.made(step));
            if (definition.isEmpty()) {
                return Outcome.refused("The project of " + step + " is not in this shop.");
            }
            Instant when = at.orElseGet(() -> shop.timeOf(sent));
            Checks checks = new Checks(definition.get());
            checks.step(step);
            checks.person("by", sent.by());
            checks.text("text", text, photos.isEmpty());
            checks.time(sent, when, shop.now());
            if (!checks.problems().isEmpty()) {
                return Outcome.refused(REFUSED, checks.problems());
            }
            try {
                files.forEach(shop.files()::put);
            } catch (EntryFiles.CannotKeepException e) {
                return new Outcome(Outcome.Kind.UNKNOWN, 0, String.valueOf(e.getMessage()), List.of(), List.of());
            }
            return shop.append(entry(sent, step, when, text, photos));
        });
    }

    private NewEntry entry(Sent sent, String step, Instant when, String text, List<Photo> photos) {
        Value.Fields payload =
                Value.Fields.NONE.with("step", step).with("at", when.toString()).with("text", text);
        if (!photos.isEmpty()) {
            payload = payload.with("photos", SentPictures.field(photos));
        }
        return new NewEntry(
                sent.client(),
                sent.by(),
                "",
                shop.now(),
                StartStep.project(step),
                EntryKind.STEP_NOTED.key(),
                payload,
                photos.stream().map(Photo::sha256).distinct().toList());
    }
}
