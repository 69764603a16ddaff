package fayline.app.usecase.book;

import fayline.app.usecase.book.Chapter.Late;
import fayline.app.usecase.book.Chapter.Mending;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.payload.Value;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The entries that are about one part or joint: which of them were corrected, and which were made long afterwards. */
final class ChapterEntries {
    /** What is entered later than this after it happened is told as entered late. */
    private static final Duration LATE = Duration.ofHours(1);

    private final List<Mending> mendings = new ArrayList<>();
    private final List<Late> late = new ArrayList<>();
    private final String project;
    private final String made;
    private final List<String> fits;

    ChapterEntries(List<Entry> entries, String project, String made, List<String> fits) {
        this.project = project;
        this.made = made;
        this.fits = List.copyOf(fits);
        Map<Long, Entry> mine = new HashMap<>();
        for (Entry e : entries) {
            if (e.kind().equals(EntryKind.CORRECTED.key())) {
                Entry wrong = mine.get(e.fields().whole("entry").orElse(0L));
                if (wrong != null) {
                    // A correction of the correction is one of the same entry.
                    mine.put(e.seq(), wrong);
                    mendings.add(mending(e, wrong));
                }
            } else if (isMine(e)) {
                mine.put(e.seq(), e);
                noteIfLate(e);
            }
        }
    }

    List<Mending> mendings() {
        return mendings;
    }

    List<Late> late() {
        return late;
    }

    private boolean isMine(Entry e) {
        if (!e.project().equals(project)) {
            return false;
        }
        Value.Fields f = e.fields();
        String about = about(f);
        return about.equals(made)
                || about.equals(project + "/" + made)
                || about.startsWith(made + "/")
                || about.startsWith(project + "/" + made + "/")
                || fits.contains(f.text("of"));
    }

    private static String about(Value.Fields f) {
        String step = f.text("step").isEmpty() ? f.text("about") : f.text("step");
        return step.isEmpty() ? f.text("of") : step;
    }

    private static Mending mending(Entry e, Entry wrong) {
        Value.Fields f = e.fields();
        return new Mending(
                e.seq(),
                wrong.seq(),
                e.taken(),
                e.by(),
                wrong.kind(),
                about(wrong.fields()),
                f.text("why"),
                f.text("withdrawn").equals("yes"));
    }

    private void noteIfLate(Entry e) {
        try {
            Instant at = Instant.parse(e.fields().text("at"));
            if (Duration.between(at, e.taken()).compareTo(LATE) >= 0) {
                late.add(new Late(e.seq(), e.taken()));
            }
        } catch (DateTimeException none) {
            // What has no time of its own was told when it was entered.
            return;
        }
    }
}
