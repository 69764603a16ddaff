package fayline.app.usecase.act;

import fayline.flow.record.payload.Photo;

/**
 * A picture as it was sent with a note.
 *
 * @param length the file's length in bytes
 * @param source gives the file, once its length was judged
 * @param original whether it is to be kept as it was taken
 * @param location whether where it was taken may stay in an original
 * @param people what was said about people in it
 */
public record SentPicture(long length, Source source, boolean original, boolean location, Photo.People people) {
    /** The most pictures that go with one note. */
    public static final int MOST = 6;

    /** From where a picture is read. */
    @FunctionalInterface
    public interface Source {
        /** The whole file. */
        byte[] bytes();
    }

    /** A picture in memory, with nothing said about people in it. */
    public static SentPicture of(byte[] bytes, boolean original, boolean location) {
        byte[] kept = bytes.clone();
        return new SentPicture(kept.length, () -> kept, original, location, Photo.People.UNSAID);
    }
}
