package fayline.app.usecase.fit;

import fayline.app.usecase.act.ChangeLines;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Names a width of a fit's frame in its definition file, with what is wanted; saved and refused like any other change. */
public final class NameWidth {
    /** What is said of a width, in the words of the file. */
    public static final List<String> FIELDS = List.of("id", "where", "wanted", "tolerance", "deviation");

    private final ChangeLines lines;

    /** By changing single lines. */
    public NameWidth(ChangeLines lines) {
        this.lines = lines;
    }

    /**
     * Names a width.
     *
     * @param sent who sends it under which id
     * @param project the project of the fit
     * @param fit the fit's id
     * @param said each of the fields as typed
     */
    public Outcome name(Sent sent, String project, String fit, Map<String, String> said) {
        Map<String, String> width = new LinkedHashMap<>();
        FIELDS.forEach(f -> width.put(f, said.getOrDefault(f, "").strip()));
        Optional<String> file = lines.fileOf(project, "fits", fit);
        return file.isEmpty()
                ? Outcome.refused("There is no fit " + fit + ".")
                : lines.change(
                        sent, project, file.get(), List.of(new ChangeLines.Add("fits[" + fit + "].widths", width)));
    }
}
