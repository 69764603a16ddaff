package fayline.app.usecase.trouble;

import fayline.app.usecase.act.Checks;
import fayline.app.usecase.act.SentPicture;
import fayline.app.usecase.act.SentPictures;
import fayline.app.usecase.act.StartStep;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.traveller.BenchTime;
import fayline.flow.project.Definition;
import fayline.flow.record.EntryFiles;
import fayline.flow.record.EntryKind;
import fayline.flow.record.NewEntry;
import fayline.flow.record.payload.Photo;
import fayline.flow.record.payload.Value;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Somebody at the bench says that something came out other than drawn. From then on whatever depends on it waits for a
 * decision.
 */
public final class RaiseDeviation {
    private static final String REFUSED = "The deviation was not recorded.";
    private final ShopRecord shop;

    /** On a shop's record. */
    public RaiseDeviation(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * What is wrong.
     *
     * @param about the step it is seen at, {@code project/made/make-number/key}, or what was made, {@code project/made}
     * @param text what, as typed; may be empty where there are pictures
     * @param structural whether structure is touched
     * @param change the entry of the change that makes it other than drawn; 0 where none does
     */
    public record Raised(String about, String text, boolean structural, long change) {
        /** What no change makes so. */
        public Raised(String about, String text, boolean structural) {
            this(about, text, structural, 0);
        }
    }

    /**
     * Records it with pictures as they were sent.
     *
     * @param sent who sends it under which id
     * @param raised what is wrong
     * @param pictures the pictures
     * @param time when it was seen
     */
    public Outcome raise(Sent sent, Raised raised, List<SentPicture> pictures, BenchTime time) {
        SentPictures read = SentPictures.of(pictures, shop, sent);
        if (!read.problems().isEmpty()) {
            return Outcome.refused(REFUSED, read.problems());
        }
        Outcome outcome = record(sent, raised, read.photos(), read.files(), time);
        return outcome.kind() == Outcome.Kind.RECORDED && !read.leftOut().isEmpty()
                ? outcome.saying(String.join(" ", read.leftOut()))
                : outcome;
    }

    /** Records it with pictures that are among the shop's files already. */
    public Outcome told(Sent sent, Raised raised, List<Photo> photos, BenchTime time) {
        return record(sent, raised, photos, List.of(), time);
    }

    private Outcome record(Sent sent, Raised raised, List<Photo> photos, List<byte[]> files, BenchTime time) {
        String project = StartStep.project(raised.about());
        return shop.deciding(() -> {
            Optional<Definition> definition = shop.definitionWith(project, StartStep.made(raised.about()));
            if (definition.isEmpty()) {
                return Outcome.refused("The project of " + raised.about() + " is not in this shop.");
            }
            Instant at = time.at().orElseGet(() -> shop.timeOf(sent));
            Checks checks = new Checks(definition.get());
            about(checks, definition.get(), raised.about());
            checks.person("by", sent.by());
            checks.text("text", raised.text(), photos.isEmpty());
            checks.time(sent, at, shop.now());
            if (!checks.problems().isEmpty()) {
                return Outcome.refused(REFUSED, checks.problems());
            }
            try {
                files.forEach(shop.files()::put);
            } catch (EntryFiles.CannotKeepException e) {
                return new Outcome(Outcome.Kind.UNKNOWN, 0, String.valueOf(e.getMessage()), List.of(), List.of());
            }
            return shop.append(entry(sent, raised, photos, at, time));
        });
    }

    private static void about(Checks checks, Definition d, String about) {
        if (about.split("/", -1).length != 2) {
            checks.step(about);
        } else if (d.parts().find(StartStep.made(about)).isEmpty()
                && d.joints().find(StartStep.made(about)).isEmpty()) {
            checks.stop("about", "\"" + about + "\"", "a part, joint or step of the definition", "");
        }
    }

    private NewEntry entry(Sent sent, Raised raised, List<Photo> photos, Instant at, BenchTime time) {
        Value.Fields payload = Value.Fields.NONE
                .with("about", raised.about())
                .with("at", at.toString())
                .with("text", raised.text())
                .withUnlessEmpty("structural", raised.structural() ? "yes" : "")
                .withUnlessEmpty("told", time.toldOf(shop, sent, at));
        if (raised.change() > 0) {
            payload = payload.with("change", raised.change());
        }
        return new NewEntry(
                sent.client(),
                sent.by(),
                "",
                shop.now(),
                StartStep.project(raised.about()),
                EntryKind.DEVIATION_RAISED.key(),
                photos.isEmpty() ? payload : payload.with("photos", SentPictures.field(photos)),
                photos.stream().map(Photo::sha256).distinct().toList());
    }
}
