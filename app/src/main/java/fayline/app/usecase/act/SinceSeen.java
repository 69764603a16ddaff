package fayline.app.usecase.act;

import fayline.app.usecase.shop.Meanwhile;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.record.Entry;
import fayline.flow.record.KeptFile;
import fayline.flow.record.RecordFold;
import fayline.store.file.yaml.UneditableException;
import fayline.store.file.yaml.YamlEdit;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What others did to a definition file since the sender had looked. What nobody else touched is nobody's concern. */
final class SinceSeen {
    /** An item by its place in a list: another may stand there now. */
    private static final Pattern BY_PLACE = Pattern.compile("^(.*\\[\\d+])(?:\\..*)?$");

    private final ShopRecord shop;
    private final String project;
    private final String path;

    SinceSeen(ShopRecord shop, String project, String path) {
        this.shop = shop;
        this.project = project;
        this.path = path;
    }

    /**
     * A text of the file as it stood, with the entry that made it.
     *
     * @param text the whole text; empty where the file was not there
     * @param by who made it
     * @param seq in which entry
     */
    record Version(String text, String by, long seq) {}

    /** The file as the sender saw it, then as others left it, in order; empty where nobody knows or nobody did anything. */
    List<Version> versions(Sent sent) {
        long last = Optional.ofNullable(shop.state().files(project).get(path))
                .map(KeptFile::seq)
                .orElse(Long.MAX_VALUE);
        if (sent.seen() < 1 || last <= sent.seen() || shop.knows(sent.client())) {
            return List.of();
        }
        return versions(v -> v.seq() > sent.seen());
    }

    /** The file as it stood under a hash, then as others left it; empty where it never did. */
    List<Version> versionsFrom(String sha256) {
        boolean[] found = {false};
        return versions(v -> {
            boolean after = found[0];
            found[0] |= KeptFile.of(path, v.text().getBytes(StandardCharsets.UTF_8))
                    .sha256()
                    .equals(sha256);
            return after;
        });
    }

    private List<Version> versions(Predicate<Version> later) {
        RecordFold fold = new RecordFold();
        List<Version> all = new ArrayList<>();
        all.add(new Version("", "", 0));
        for (Entry e : shop.entries(1)) {
            fold.take(e);
            if (!path.equals(e.fields().text("path"))) {
                continue;
            }
            String text = Optional.ofNullable(fold.state().files(project).get(path))
                    .filter(f -> !f.binary())
                    .map(KeptFile::content)
                    .orElse("");
            Version v = new Version(text, e.by(), e.seq());
            if (!later.test(v)) {
                all.clear();
                all.add(v);
            } else if (!all.get(all.size() - 1).text().equals(text)) {
                // a file of another project under the same path leaves this one as it is
                all.add(v);
            }
        }
        return all.size() > 1 ? List.copyOf(all) : List.of();
    }

    /** What others changed of the very values that changes are about. */
    List<Meanwhile> touching(Sent sent, List<ChangeLines.Change> changes) {
        List<Version> versions = versions(sent);
        List<Meanwhile> all = new ArrayList<>();
        if (versions.isEmpty()) {
            return all;
        }
        for (ChangeLines.Change c : changes) {
            if (c instanceof ChangeLines.Put put) {
                one(versions, put.key(), put.value()).ifPresent(all::add);
            } else if (c instanceof ChangeLines.TakeOut out) {
                one(versions, out.key(), "").ifPresent(all::add);
            }
        }
        return all;
    }

    private Optional<Meanwhile> one(List<Version> versions, String key, String mine) {
        Matcher m = BY_PLACE.matcher(key);
        if (m.matches() && !m.group(1).equals(key)) {
            Optional<Meanwhile> row = compare(versions, m.group(1), mine);
            Optional<Meanwhile> value = compare(versions, key, mine);
            return value.isPresent() ? value : row;
        }
        return compare(versions, key, mine);
    }

    private Optional<Meanwhile> compare(List<Version> versions, String key, String mine) {
        String seen = said(versions.get(0), key);
        String before = seen;
        Version by = versions.get(0);
        for (Version v : versions) {
            String then = said(v, key);
            if (!then.equals(before)) {
                by = v;
            }
            before = then;
        }
        return before.equals(seen) || before.equals(mine)
                ? Optional.empty()
                : Optional.of(new Meanwhile(key, seen, before, mine, by.by(), by.seq()));
    }

    private String said(Version v, String key) {
        try {
            return v.text().isEmpty() ? "" : YamlEdit.of(path, v.text()).said(key);
        } catch (UneditableException e) {
            return v.text();
        }
    }
}
