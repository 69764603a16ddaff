package fayline.app.usecase.act;

import fayline.app.usecase.shop.Meanwhile;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.record.Entry;
import fayline.flow.record.KeptFile;
import fayline.flow.record.RecordFold;
import fayline.store.file.DefinitionFolder;
import fayline.store.file.kind.Kind;
import fayline.store.file.yaml.UneditableException;
import fayline.store.file.yaml.YamlEdit;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Changes single values of a definition file as a form does: only the lines of those values change, comments and order stay.
 * The changed text is saved like any other, as one entry, and refused like any other.
 */
public final class ChangeLines {
    private final ShopRecord shop;

    /** On a shop's record. */
    public ChangeLines(ShopRecord shop) {
        this.shop = shop;
    }

    /** One change; key paths as in messages, an item also by its id: {@code people[ada].absences[1].to}. */
    public sealed interface Change {
        /** The same change of a text. */
        YamlEdit make(YamlEdit text);
    }

    /**
     * A value changed, or a key added to its mapping.
     *
     * @param key where
     * @param value the value as typed
     */
    public record Put(String key, String value) implements Change {
        @Override
        public YamlEdit make(YamlEdit text) {
            return text.set(key, value);
        }
    }

    /**
     * An item added at the end of a list; the list is made where it is not there yet.
     *
     * @param list the list
     * @param fields the item's keys and values, in order
     */
    public record Add(String list, Map<String, String> fields) implements Change {
        /** Copies the map. */
        public Add {
            fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
        }

        @Override
        public YamlEdit make(YamlEdit text) {
            return text.append(list, fields);
        }
    }

    /**
     * A key or an item taken out.
     *
     * @param key what
     */
    public record TakeOut(String key) implements Change {
        @Override
        public YamlEdit make(YamlEdit text) {
            return text.remove(key);
        }
    }

    /**
     * Makes changes to one file; refused where somebody else changed the same values since the sender had looked.
     *
     * @param sent who sends them under which id
     * @param project the project that is seen
     * @param path the file
     * @param changes the changes, in order; positions count after the ones before
     */
    public Outcome change(Sent sent, String project, String path, List<Change> changes) {
        return shop.deciding(() -> {
            Optional<Outcome> before = resent(sent, project, path, changes);
            if (before.isPresent()) {
                return before.get();
            }
            Optional<String> text = shop.folder(project).text(path);
            if (text.isEmpty()) {
                return Outcome.refused("There is no file " + path + ".");
            }
            List<Meanwhile> meanwhile = new SinceSeen(shop, project, path).touching(sent, changes);
            if (!meanwhile.isEmpty()) {
                return Outcome.overtaken(meanwhile);
            }
            try {
                return new SaveFile(shop).save(sent, project, path, changed(path, text.get(), changes));
            } catch (UneditableException e) {
                return Outcome.refused(path + " was not changed: " + e.getMessage() + ".");
            }
        });
    }

    private static String changed(String path, String text, List<Change> changes) {
        YamlEdit edit = YamlEdit.of(path, text);
        for (Change c : changes) {
            edit = c.make(edit);
        }
        return edit.text();
    }

    /**
     * What became of the same changes when they were sent before. They are told by what they made of the text that stood then:
     * made once more of the text now, they would say something else under the same id.
     */
    private Optional<Outcome> resent(Sent sent, String project, String path, List<Change> changes) {
        Optional<Long> seq = shop.seqOf(sent.client());
        if (seq.isEmpty()) {
            return Optional.empty();
        }
        RecordFold fold = new RecordFold();
        List<Entry> upTo =
                shop.entries(1).stream().filter(e -> e.seq() <= seq.get()).toList();
        upTo.subList(0, upTo.size() - 1).forEach(fold::take);
        Optional<KeptFile> then =
                Optional.ofNullable(fold.state().files(project).get(path));
        fold.take(upTo.get(upTo.size() - 1));
        Optional<KeptFile> made =
                Optional.ofNullable(fold.state().files(project).get(path)).filter(k -> k.seq() == seq.get());
        try {
            return then.filter(t -> !t.binary())
                    .map(t -> changed(path, t.content(), changes))
                    .filter(text -> made.filter(m -> m.content().equals(text)).isPresent())
                    .map(text -> Outcome.already(seq.get()));
        } catch (UneditableException e) {
            return Optional.empty();
        }
    }

    /**
     * The file in which a thing of a kind stands, as {@code lots/new.yaml}.
     *
     * @param project the project that is seen
     * @param kind the kind, as {@code lots}
     * @param id its id
     */
    public Optional<String> fileOf(String project, String kind, String id) {
        DefinitionFolder folder = shop.folder(project);
        for (String path : folder.paths()) {
            boolean ofKind = Kind.ofPath(path).filter(k -> k.key().equals(kind)).isPresent();
            Optional<String> text = ofKind ? folder.text(path) : Optional.empty();
            if (text.isPresent()
                    && YamlEdit.of(path, text.get())
                            .value(kind + "[" + id + "].id")
                            .isPresent()) {
                return Optional.of(path);
            }
        }
        return Optional.empty();
    }
}
