package fayline.app.usecase.fit;

import fayline.app.usecase.act.SaveFile;
import fayline.app.usecase.folder.ImportFolder;
import fayline.app.usecase.folder.Imported;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.basis.finding.InputProblem;
import fayline.basis.finding.Severity;
import fayline.flow.project.design.Hand;
import fayline.flow.record.MemoryLog;
import fayline.store.file.DefinitionFolder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Begins a fit at the bench: one new definition file {@code fits/ID.yaml}, saved like any other. In a shop that holds no project
 * yet, a small one called Bench is made for it first, with whoever begins the fit as its crew and every other figure marked as
 * assumed in the file itself.
 */
public final class BeginFit {
    /** The project that is made where there is none. */
    public static final String BENCH = "bench";

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
     * @return refused, with what was wrong, where it could not be read
     */
    public Outcome begin(Sent sent, String project, NewFit fit) {
        return shop.deciding(() -> {
            String path = path(fit.id());
            List<String> projects = shop.state().projects().stream().toList();
            boolean taken = projects.contains(project)
                    && !shop.knows(sent.client())
                    && shop.definition(project)
                            .filter(d -> d.fits().find(fit.id()).isPresent())
                            .isPresent();
            if (taken) {
                return Outcome.refused(
                        "The fit was not begun.",
                        List.of(new InputProblem(
                                Severity.STOP, "", 0, "id", "\"" + fit.id() + "\"", "an id that no fit has yet", "")));
            }
            if (!projects.isEmpty()) {
                return new SaveFile(shop).save(sent, project, path, text(fit));
            }
            DefinitionFolder bench = bench(sent.by(), path, text(fit));
            ShopRecord trial = new ShopRecord(new MemoryLog(), shop.clock());
            Imported tried = new ImportFolder(trial).of(bench, false);
            if (!tried.taken()) {
                return Outcome.refused("The fit was not begun.", tried.problems());
            }
            Imported made = new ImportFolder(shop).of(bench.without(path), false);
            return made.taken()
                    ? new SaveFile(shop).save(sent, BENCH, path, text(fit))
                    : Outcome.refused("The fit was not begun.", made.problems());
        });
    }

    /** The file of a fit begun on the spot. */
    static String path(String id) {
        return "fits/" + (id.matches("[a-z0-9][a-z0-9-]{0,63}") ? id : "unnamed") + ".yaml";
    }

    private static String text(NewFit f) {
        StringBuilder t = new StringBuilder("# Begun on the spot; \"part:\" names the part once it is known.\nfits:\n");
        t.append("  - id: ").append(quoted(f.id())).append('\n');
        line(t, "name", f.name());
        if (f.hand() != Hand.NONE) {
            line(t, "hand", f.hand().key());
        }
        line(t, "gap", f.gap());
        line(t, "gap-tolerance", f.gapTolerance());
        line(t, "flush", f.flush());
        line(t, "flush-tolerance", f.flushTolerance());
        t.append("    stations:").append(f.stations().isEmpty() ? " []" : "").append('\n');
        for (NewFit.Marked m : f.stations()) {
            t.append("      - {id: ").append(quoted(m.id())).append(", where: ").append(quoted(m.where()));
            if (!m.at().isBlank()) {
                t.append(", at: ").append(quoted(m.at()));
            }
            if (!m.normal().isBlank()) {
                t.append(", normal: ").append(quoted(m.normal()));
            }
            t.append("}\n");
        }
        return t.toString();
    }

    private static void line(StringBuilder t, String key, String value) {
        t.append("    ").append(key).append(": ").append(quoted(value)).append('\n');
    }

    private static String quoted(String text) {
        return '"'
                + text.replace("\\", "\\\\")
                        .replace("\"", "\\\"")
                        .replace("\n", "\\n")
                        .replace("\t", "\\t")
                + '"';
    }

    private DefinitionFolder bench(String person, String path, String fit) {
        LocalDate today = LocalDate.ofInstant(shop.now(), shop.clock().getZone());
        String project = """
                project:
                  id: bench
                  name: Bench
                  serial: none
                  design: bench
                  revision: none
                  units: metric
                  currency: EUR   # assumed
                  start: %s
                """.formatted(today);
        String shopText = """
                # Made with the first fit; nothing here was measured. Change it to your shop's own.
                shop:
                  name: Bench
                  zone: %s
                  elevation: 0 m   # assumed
                  limits: {coldest: 18 degC, dampest: 70 %%, dew-margin: 3 K}   # assumed
                  dust-settles: 2 h   # assumed
                  mixing: 5 min   # assumed
                  life-trusted: 60 %%   # assumed
                  resin-waste: 15 %%   # assumed
                  cloth-waste: 15 %%   # assumed
                  stands:
                    - {id: bench-1, name: Bench, room: shop, dust: no, wet: yes}
                """.formatted(
                        shop.clock().getZone().getId().equals("Z")
                                ? "Etc/UTC"
                                : shop.clock().getZone().getId());
        String people = """
                people:
                  - id: %s
                    name: %s
                    skills: [bond, sign]   # assumed
                    hours:   # assumed
                      - {days: [mon, tue, wed, thu, fri], from: "08:00", to: "17:00"}
                """.formatted(quoted(person), quoted(named(person)));
        String climate = """
                climate:
                  usual: {day: 20 degC, night: 17 degC, humidity: 55 %}   # assumed
                """;
        return DefinitionFolder.ofBytes(Map.of(
                "project.yaml",
                bytes(project),
                "shop.yaml",
                bytes(shopText),
                "people.yaml",
                bytes(people),
                "climate.yaml",
                bytes(climate),
                path,
                bytes(fit)));
    }

    private static String named(String person) {
        return person.isEmpty() ? person : person.substring(0, 1).toUpperCase(Locale.ROOT) + person.substring(1);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
