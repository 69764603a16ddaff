package fayline.app.usecase.inspect;

import fayline.app.usecase.act.SentPicture;
import fayline.app.usecase.act.SentPictures;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.record.EntryFiles;
import fayline.flow.record.EntryKind;
import fayline.flow.record.NewEntry;
import fayline.flow.record.payload.Photo;
import fayline.flow.record.payload.Value;
import java.util.List;
import java.util.Optional;

/**
 * Pictures that go with an entry: as they were sent, or among the shop's files already.
 *
 * @param photos the pictures
 * @param files bytes that are still to be kept
 * @param refused why they are not taken; empty where they are
 */
public record Pictures(List<Photo> photos, List<byte[]> files, Optional<Outcome> refused) {
    /** None. */
    public static final Pictures NONE = told(List.of());

    /** Copies the lists. */
    public Pictures {
        photos = List.copyOf(photos);
        files = List.copyOf(files);
    }

    /** Pictures that are among the shop's files already. */
    public static Pictures told(List<Photo> photos) {
        return new Pictures(photos, List.of(), Optional.empty());
    }

    /** Pictures as they were sent, judged. */
    public static Pictures sent(List<SentPicture> pictures, ShopRecord shop, Sent sent) {
        SentPictures read = SentPictures.of(pictures, shop, sent);
        return read.problems().isEmpty()
                ? new Pictures(read.photos(), read.files(), Optional.empty())
                : new Pictures(
                        List.of(),
                        List.of(),
                        Optional.of(Outcome.refused("The pictures were not taken.", read.problems())));
    }

    /** Keeps the files, then makes the entry. */
    Outcome append(ShopRecord shop, Sent sent, String project, EntryKind kind, Value.Fields payload) {
        try {
            files.forEach(shop.files()::put);
        } catch (EntryFiles.CannotKeepException e) {
            return new Outcome(Outcome.Kind.UNKNOWN, 0, String.valueOf(e.getMessage()), List.of(), List.of());
        }
        return shop.append(new NewEntry(
                sent.client(),
                sent.by(),
                "",
                shop.now(),
                project,
                kind.key(),
                photos.isEmpty() ? payload : payload.with("photos", SentPictures.field(photos)),
                photos.stream().map(Photo::sha256).distinct().toList()));
    }
}
