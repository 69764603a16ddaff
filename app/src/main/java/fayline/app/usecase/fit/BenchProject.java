package fayline.app.usecase.fit;

import fayline.store.file.DefinitionFolder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** The small project that is made where a shop begins with a fit: every figure in it is marked as assumed. */
final class BenchProject {
    private BenchProject() {}

    /**
     * Its files.
     *
     * @param person the id of whoever begins the fit, who is its crew
     * @param today the shop's day
     * @param zone the shop's zone
     */
    static DefinitionFolder files(String person, LocalDate today, ZoneId zone) {
        Map<String, byte[]> files = new TreeMap<>();
        put(files, "project.yaml", """
                project:
                  id: bench
                  name: Bench
                  serial: none
                  design: bench
                  revision: none
                  units: metric
                  currency: EUR   # assumed
                  start: %s
                """.formatted(today));
        put(files, "shop.yaml", """
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
                """.formatted(zone.getId().equals("Z") ? "Etc/UTC" : zone.getId()));
        put(files, "people.yaml", """
                people:
                  - id: %s
                    name: %s
                    skills: [bond, sign]   # assumed
                    hours:   # assumed
                      - {days: [mon, tue, wed, thu, fri], from: "08:00", to: "17:00"}
                """.formatted(FitText.quoted(person), FitText.quoted(named(person))));
        put(files, "climate.yaml", """
                climate:
                  usual: {day: 20 degC, night: 17 degC, humidity: 55 %}   # assumed
                """);
        return DefinitionFolder.ofBytes(files);
    }

    private static void put(Map<String, byte[]> files, String path, String text) {
        files.put(path, text.getBytes(StandardCharsets.UTF_8));
    }

    private static String named(String person) {
        return person.isEmpty() ? person : person.substring(0, 1).toUpperCase(Locale.ROOT) + person.substring(1);
    }
}
