package fayline.app.usecase.fit;

import fayline.app.usecase.view.ShopView;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import fayline.store.file.yaml.YamlDoor;
import java.util.Map;
import java.util.Optional;

/** Where the definition says what a fit rests on: file and line of each of its keys. */
public final class FitLines {
    private final Optional<Tree> fit;

    private FitLines(Optional<Tree> fit) {
        this.fit = fit;
    }

    /**
     * The lines of a fit as the definition now has them.
     *
     * @param view the shop
     * @param id the fit's id
     */
    public static FitLines of(ShopView view, String id) {
        return new FitLines(view.record().files(view.project()).entrySet().stream()
                .filter(f -> !f.getValue().binary() && f.getKey().endsWith(".yaml"))
                .flatMap(f -> fit(f.getKey(), f.getValue().content(), id).stream())
                .findFirst());
    }

    /** The same of texts by their paths. */
    static FitLines of(Map<String, String> texts, String id) {
        return new FitLines(texts.entrySet().stream()
                .flatMap(f -> fit(f.getKey(), f.getValue(), id).stream())
                .findFirst());
    }

    /**
     * A line of a file.
     *
     * @param path the file
     * @param line the line, counted from 1
     */
    public record Line(String path, int line) {}

    /**
     * The line on which something stands.
     *
     * @param keys keys from the fit down; an item of a list by its id or name
     * @return empty where it is not written
     */
    public Optional<Line> line(String... keys) {
        Optional<Tree> at = fit;
        Optional<Line> found = fit.map(t -> new Line(t.file(), t.line()));
        for (String key : keys) {
            if (at.isEmpty()) {
                return Optional.empty();
            }
            Tree in = at.get();
            boolean list = in.form() == Tree.Form.LIST;
            at = list ? item(in, key) : in.get(key);
            found = at.map(t -> new Line(t.file(), list ? t.line() : in.lineOf(key)));
        }
        return found;
    }

    private static Optional<Tree> fit(String path, String text, String id) {
        return YamlDoor.read(path, text, new Problems())
                .flatMap(t -> t.get("fits"))
                .flatMap(t -> item(t, id));
    }

    private static Optional<Tree> item(Tree list, String id) {
        return list.items().stream()
                .filter(i -> is(i, "id", id) || is(i, "name", id))
                .findFirst();
    }

    private static boolean is(Tree item, String key, String value) {
        return item.get(key).map(Tree::text).filter(value::equals).isPresent();
    }
}
