package fayline.store.file.kind;

import fayline.store.file.shape.Either;
import fayline.store.file.shape.Key;
import fayline.store.file.shape.Keys;
import fayline.store.file.shape.Listed;
import fayline.store.file.shape.Named;
import fayline.store.file.shape.Shape;
import fayline.store.file.yaml.Tree;

/** The keys of every kind as tables, for the page that describes the definition folder. */
final class KeyTable {
    private final StringBuilder text = new StringBuilder();

    private KeyTable() {}

    static String ofAllKinds() {
        KeyTable t = new KeyTable();
        for (Kind kind : Kind.values()) {
            t.text.append("\n## ").append(kind.key()).append("\n\n");
            t.text.append("`").append(kind.key()).append(".yaml`");
            if (kind.isList()) {
                t.text.append(" or files in `").append(kind.key()).append("/`");
            }
            t.text.append(": ").append(kind.about()).append(". ");
            t.text.append(kind.ofShop() ? "Belongs to the shop.\n\n" : "Belongs to the project.\n\n");
            t.text.append("| key | must | what it is | what is written |\n|---|---|---|---|\n");
            t.rows(
                    kind.key() + (kind.isList() ? "[]" : ""),
                    kind.isList() ? ((Listed) kind.shape()).item() : kind.shape());
        }
        return t.text.toString();
    }

    private void rows(String path, Shape shape) {
        if (shape instanceof Keys keys) {
            for (Key key : keys.keys()) {
                row(path + "." + key.name(), key, keys);
            }
        } else if (shape instanceof Listed list) {
            rows(path + "[]", list.item());
        } else if (shape instanceof Named named) {
            rows(path + ".NAME", named.value());
        } else if (shape instanceof Either either) {
            either.shapes().forEach(s -> rows(path, s));
        }
    }

    private void row(String path, Key key, Keys keys) {
        boolean choice = keys.oneOf().stream().anyMatch(g -> g.contains(key.name()));
        text.append("| `").append(path.substring(path.indexOf('.') + 1)).append("` | ");
        text.append(key.needed() ? "yes" : choice ? "one of" : "").append(" | ");
        text.append(cell(key.about()))
                .append(" | ")
                .append(cell(written(key.shape())))
                .append(" |\n");
        rows(path, key.shape());
    }

    private static String written(Shape shape) {
        if (shape.form() == Tree.Form.SCALAR && !(shape instanceof Either)) {
            return shape.words();
        }
        if (shape instanceof Listed list) {
            return "a list" + (list.least() > 0 ? ", not empty" : "")
                    + (list.item().form() == Tree.Form.SCALAR
                            ? ": " + list.item().words()
                            : "");
        }
        return shape instanceof Named || shape instanceof Either ? shape.words() : "keys below";
    }

    private static String cell(String s) {
        return s.replace("|", "\\|");
    }
}
