package fayline.app.usecase.act;

import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.basis.finding.InputProblem;
import fayline.basis.finding.Severity;
import fayline.flow.record.Entry;
import fayline.flow.record.payload.Photo;
import fayline.flow.record.payload.Value;
import fayline.store.file.DefinitionFolder;
import fayline.store.file.picture.PictureReader;
import fayline.store.file.picture.PictureRefusedException;
import java.util.ArrayList;
import java.util.List;

/**
 * The pictures of one note, read. What was kept under the same id before is not read anew: another version of the program may
 * make the same picture smaller in other bytes, and then the same note would seem to say something else.
 */
public final class SentPictures {
    private final List<Photo> photos = new ArrayList<>();
    private final List<byte[]> files = new ArrayList<>();
    private final List<InputProblem> problems = new ArrayList<>();
    private final List<String> leftOut = new ArrayList<>();

    private SentPictures() {}

    /**
     * Reads the pictures of an entry.
     *
     * @param sent as they were sent
     * @param shop the record, in which the same entry may stand already
     * @param by who sends it under which id
     */
    public static SentPictures of(List<SentPicture> sent, ShopRecord shop, Sent by) {
        return of(
                sent,
                shop.seqOf(by.client())
                        .flatMap(shop::entry)
                        .map(Entry::fields)
                        .map(Photo::allOf)
                        .orElse(List.of()));
    }

    /** The pictures as an entry's field {@code photos}. */
    public static Value field(List<Photo> photos) {
        return new Value.Many(photos.stream().map(p -> (Value) p.fields()).toList());
    }

    private static SentPictures of(List<SentPicture> sent, List<Photo> before) {
        SentPictures read = new SentPictures();
        if (sent.size() > SentPicture.MOST) {
            read.problem(
                    "photos",
                    sent.size() + " pictures",
                    "at most " + SentPicture.MOST + " with one note",
                    "send the others with another note");
            return read;
        }
        for (int i = 0; i < sent.size(); i++) {
            read.add("photo " + (i + 1), sent.get(i), i < before.size() ? List.of(before.get(i)) : List.of());
        }
        return read;
    }

    private void add(String key, SentPicture one, List<Photo> before) {
        try {
            PictureReader.judgeLength(one.length());
            add(one, one.source().bytes(), before);
        } catch (PictureRefusedException e) {
            problem(key, e.found(), e.expected(), e.remedy());
        }
    }

    private void add(SentPicture one, byte[] bytes, List<Photo> before) throws PictureRefusedException {
        String hash = DefinitionFolder.hash(bytes);
        List<Photo> same =
                before.stream().filter(p -> p.sent().equals(hash)).limit(1).toList();
        if (!same.isEmpty()) {
            Photo p = same.get(0);
            photos.add(new Photo(
                    p.sha256(),
                    p.bytes(),
                    p.sort(),
                    p.widthPx(),
                    p.heightPx(),
                    one.original(),
                    p.location(),
                    one.people(),
                    hash));
            return;
        }
        PictureReader.Read read = PictureReader.read(bytes, one.original(), one.location());
        byte[] kept = read.bytes();
        photos.add(new Photo(
                DefinitionFolder.hash(kept),
                kept.length,
                read.sort(),
                read.widthPx(),
                read.heightPx(),
                read.original(),
                read.location(),
                one.people(),
                hash));
        files.add(kept);
        leftOut.addAll(read.leftOut());
    }

    private void problem(String key, String found, String expected, String suggestion) {
        problems.add(new InputProblem(Severity.STOP, "", 0, key, found, expected, suggestion));
    }

    /** What is named in the entry, in order. */
    public List<Photo> photos() {
        return List.copyOf(photos);
    }

    /** The files that are to be kept before it. */
    public List<byte[]> files() {
        return List.copyOf(files);
    }

    /** What was refused. */
    public List<InputProblem> problems() {
        return List.copyOf(problems);
    }

    /** What was left out of a picture, a sentence each. */
    public List<String> leftOut() {
        return List.copyOf(leftOut);
    }
}
