package fayline.app.usecase.view;

import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.record.RecordState;
import fayline.flow.record.inspect.StagePhoto;
import fayline.flow.record.payload.Photo;
import fayline.store.file.picture.PictureReader;
import fayline.store.file.picture.PictureRefusedException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The pictures that standing notes, deviations, visits and findings name. What none names, or one that was taken back, is not shown. */
public final class Photos {
    /** The longer edge of a picture that is kept smaller than it was taken, in pixels. */
    public static final int LONG_EDGE_PX = PictureReader.LONG_EDGE_PX;

    /** Small pictures kept ready; at some 20 kB each a few megabytes. */
    private static final int READY = 300;

    private final ShopRecord shop;
    private final Map<String, byte[]> ready = new LinkedHashMap<>(READY, 0.75f, true);

    /** Of a shop's record. */
    public Photos(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * A picture to be shown.
     *
     * @param bytes the file
     * @param sort what it is
     */
    @SuppressWarnings("ArrayRecordComponent") // copied on the way in and out
    public record Shown(byte[] bytes, Photo.Sort sort) {
        /** Copies the bytes. */
        public Shown {
            bytes = bytes.clone();
        }

        @Override
        public byte[] bytes() {
            return bytes.clone();
        }
    }

    /** A picture as it is kept; empty where no standing note names it, or where its file is missing or damaged. */
    public Optional<Shown> whole(String sha256) {
        return named(sha256).flatMap(p -> shop.files().get(p.sha256()).map(bytes -> new Shown(bytes, p.sort())));
    }

    /** A picture upright and small, as JPEG; made when it is asked for first. */
    public Optional<Shown> small(String sha256) {
        return named(sha256).flatMap(p -> smallBytes(p.sha256())).map(b -> new Shown(b, Photo.Sort.JPEG));
    }

    /** A picture upright and of a size for paper, as JPEG; empty where no standing note names it or it cannot be read. */
    public Optional<byte[]> printed(String sha256) {
        return named(sha256).flatMap(p -> shop.files().get(p.sha256())).flatMap(Photos::forPaper);
    }

    private static Optional<byte[]> forPaper(byte[] whole) {
        try {
            return Optional.of(PictureReader.printed(whole));
        } catch (PictureRefusedException e) {
            // A book says that it is missing; the file itself stays in the record.
            return Optional.empty();
        }
    }

    private synchronized Optional<byte[]> smallBytes(String sha256) {
        byte[] known = ready.get(sha256);
        if (known != null) {
            return Optional.of(known);
        }
        Optional<byte[]> whole = shop.files().get(sha256);
        try {
            Optional<byte[]> made = whole.isEmpty() ? whole : Optional.of(PictureReader.small(whole.get()));
            made.ifPresent(m -> keepReady(sha256, m));
            return made;
        } catch (PictureRefusedException e) {
            // It was decoded once before it was kept: another decoder may still refuse it. The whole one is shown as it
            // is.
            return Optional.empty();
        }
    }

    private void keepReady(String sha256, byte[] made) {
        ready.put(sha256, made);
        while (ready.size() > READY) {
            ready.remove(ready.keySet().iterator().next());
        }
    }

    private Optional<Photo> named(String sha256) {
        RecordState state = shop.state();
        Stream<Photo> ofNotes =
                state.steps().values().stream().flatMap(s -> s.notes().stream()).flatMap(n -> n.photos().stream());
        Stream<Photo> ofDeviations =
                state.trouble().deviations().values().stream().flatMap(d -> d.photos().stream());
        Stream<Photo> ofVisits = state.inspect().visits().values().stream()
                .flatMap(v -> v.photos().stream())
                .map(StagePhoto::photo);
        Stream<Photo> ofFindings = state.inspect().faults().values().stream()
                .flatMap(f ->
                        Stream.concat(f.photos().stream(), f.chain().stream().flatMap(s -> s.photos().stream())));
        return Stream.of(ofNotes, ofDeviations, ofVisits, ofFindings)
                .flatMap(all -> all)
                .filter(p -> p.sha256().equals(sha256))
                .findFirst();
    }
}
