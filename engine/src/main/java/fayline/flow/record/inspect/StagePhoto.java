package fayline.flow.record.inspect;

import fayline.flow.record.payload.Photo;

/**
 * A picture that shows what will be closed over.
 *
 * @param photo the picture
 * @param scale what in it tells the size, as typed; empty where nobody said
 * @param facing from where it looks whither, as typed; empty where nobody said
 */
public record StagePhoto(Photo photo, String scale, String facing) {
    /** Whether size and direction are told, so that it counts where pictures are asked for. */
    public boolean isTold() {
        return !scale.isBlank() && !facing.isBlank();
    }
}
