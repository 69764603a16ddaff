package fayline.app.usecase.fit;

import fayline.app.usecase.act.SaveFile;
import fayline.app.usecase.folder.ImportFolder;
import fayline.app.usecase.folder.Imported;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.basis.finding.InputProblem;
import fayline.basis.finding.Severity;
import fayline.method.fitup.outline.EvenStations;
import fayline.method.fitup.outline.OutlineShape;
import fayline.method.fitup.outline.PartOutline;
import fayline.store.file.DefinitionFolder;
import fayline.store.file.DefinitionRead;
import fayline.store.file.DefinitionReader;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Begins a fit at the bench: one new definition file {@code fits/ID.yaml}, with its drawing where one was given, saved like any
 * other and all at once. In a shop that holds no project yet, a small one called Bench is made with it in the same transaction,
 * with whoever begins the fit as its crew and every other figure marked as assumed in the file itself.
 */
public final class BeginFit {
    /** The project that is made where there is none. */
    public static final String BENCH = "bench";

    private static final String NOT_BEGUN = "The fit was not begun.";
    private final ShopRecord shop;

    /** In a shop's record. */
    public BeginFit(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * Begins a fit.
     *
     * @param sent who sends it under which id
     * @param project the project it belongs to; not looked at where the shop holds none
     * @param fit the fit as typed
     * @return refused, with what was wrong, where it could not be read; nothing is written then
     */
    public Outcome begin(Sent sent, String project, NewFit fit) {
        return shop.deciding(() -> {
            List<String> projects = shop.state().projects();
            String into = projects.isEmpty() ? BENCH : project;
            boolean taken = !projects.isEmpty()
                    && !shop.knows(sent.client())
                    && shop.definition(into)
                            .filter(d -> d.fits().find(fit.id()).isPresent())
                            .isPresent();
            if (taken) {
                return refused("id", "\"" + fit.id() + "\"", "an id that no fit has yet");
            }
            if (fit.spread() < 0 || fit.spread() > EvenStations.MOST) {
                return refused(
                        "spread", String.valueOf(fit.spread()), "a number of stations from 1 to " + EvenStations.MOST);
            }
            if (fit.spread() > 0 && fit.edge().isEmpty()) {
                return refused("spread", "no edge", "an edge along which the stations are spread");
            }
            DefinitionFolder base = projects.isEmpty()
                    ? BenchProject.files(
                            sent.by(),
                            LocalDate.ofInstant(shop.now(), shop.clock().getZone()),
                            shop.clock().getZone())
                    : shop.folder(into);
            return write(sent, into, fit, base, projects.isEmpty());
        });
    }

    private Outcome write(Sent sent, String project, NewFit fit, DefinitionFolder base, boolean fresh) {
        String path = path(fit.id());
        Map<String, String> files = new LinkedHashMap<>();
        files.put(path, "");
        fit.edge().filter(e -> !e.drawing().isEmpty()).ifPresent(e -> files.put(e.value(), e.drawing()));
        if (fit.spread() == 0) {
            files.put(path, FitText.of(fit, fit.stations(), List.of()));
        } else {
            files.put(path, FitText.of(fit, NewFit.numbered(1), List.of()));
            DefinitionRead read = DefinitionReader.read(with(base, files));
            Optional<PartOutline> outline = outline(read, fit.id());
            if (outline.isEmpty()) {
                return Outcome.refused(NOT_BEGUN, read.stops());
            }
            SpreadStations spread = new SpreadStations(outline.get(), fit.hand());
            files.put(path, FitText.of(fit, spread.stations(fit.spread()), spread.marks()));
        }
        if (!fresh) {
            return new SaveFile(shop).saveTogether(sent, project, files);
        }
        Imported made = new ImportFolder(shop).begun(with(base, files), path, sent);
        return made.taken()
                ? new Outcome(
                        Outcome.Kind.RECORDED,
                        shop.seqOf(sent.client()).orElse(0L),
                        "The fit is begun.",
                        List.of(),
                        List.of())
                : Outcome.refused(NOT_BEGUN, made.problems());
    }

    private static DefinitionFolder with(DefinitionFolder base, Map<String, String> files) {
        DefinitionFolder all = base;
        for (Map.Entry<String, String> f : files.entrySet()) {
            all = all.with(f.getKey(), f.getValue());
        }
        return all;
    }

    private static Optional<PartOutline> outline(DefinitionRead read, String fit) {
        return read.definition()
                .flatMap(d -> d.fits().find(fit))
                .flatMap(f -> f.outline())
                .map(OutlineShape::drawn)
                .flatMap(r -> r.outline());
    }

    private static Outcome refused(String key, String found, String expected) {
        return Outcome.refused(NOT_BEGUN, List.of(new InputProblem(Severity.STOP, "", 0, key, found, expected, "")));
    }

    /** The file of a fit begun on the spot. */
    static String path(String id) {
        return "fits/" + (id.matches("[a-z0-9][a-z0-9-]{0,63}") ? id : "unnamed") + ".yaml";
    }
}
