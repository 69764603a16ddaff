package fayline.app.usecase.folder;

import fayline.basis.finding.InputProblem;
import fayline.basis.finding.Severity;
import fayline.flow.record.EntryFiles;
import fayline.flow.record.payload.Photo;
import fayline.store.file.HistoryEvent;
import fayline.store.file.HistoryPhoto;
import fayline.store.file.picture.PictureReader;
import fayline.store.file.picture.PictureRefusedException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The photos that a history names, found among the files beside it and looked at before anything is recorded. */
final class FolderPhotos {
    private final EntryFiles files;
    private final List<InputProblem> problems = new ArrayList<>();

    FolderPhotos(EntryFiles files) {
        this.files = files;
    }

    /** The photos of an event; what is missing or no photo of ours becomes a problem and is left out. */
    List<Photo> of(HistoryEvent e) {
        List<Photo> photos = new ArrayList<>();
        for (HistoryPhoto p : e.photos()) {
            Optional<byte[]> content = files.get(p.sha256());
            if (content.isEmpty()) {
                problem(e, "no such file, or one that was changed", HistoryPhoto.FOLDER + "/" + p.sha256());
                continue;
            }
            try {
                PictureReader.Read read = PictureReader.kept(content.get());
                photos.add(new Photo(
                        p.sha256(),
                        content.get().length,
                        read.sort(),
                        read.widthPx(),
                        read.heightPx(),
                        p.original(),
                        p.location(),
                        p.people(),
                        p.sent()));
            } catch (PictureRefusedException x) {
                problem(e, x.found(), x.expected());
            }
        }
        return photos;
    }

    private void problem(HistoryEvent e, String found, String expected) {
        problems.add(new InputProblem(
                Severity.STOP,
                e.file(),
                e.line(),
                "photos",
                found,
                expected,
                "put the file where it was exported from, or take the photo out of the event"));
    }

    List<InputProblem> problems() {
        return List.copyOf(problems);
    }
}
