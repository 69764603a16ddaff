package fayline.store.file;

import fayline.flow.record.payload.Photo;

/**
 * A photo of a note, as a {@code history} file tells it. Its size follows from its file.
 *
 * @param sha256 hash of its file
 * @param people what was said about people in it
 * @param original whether it was kept as it was taken
 * @param location whether the place was left in
 * @param sent hash of what was sent
 */
public record HistoryPhoto(String sha256, Photo.People people, boolean original, boolean location, String sent) {
    /** Where the files of photos lie in a folder. */
    public static final String FOLDER = "history/photos";
}
