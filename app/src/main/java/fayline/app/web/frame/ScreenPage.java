package fayline.app.web.frame;

import fayline.app.usecase.people.Act;
import io.javalin.config.RoutesConfig;
import java.util.List;
import java.util.Set;

/** Who is at the screen, which project it shows, and how it shows it: theme, density, units. */
public final class ScreenPage implements Page {
    private static final Set<String> THEMES = Set.of("machine", "day", "night");
    private static final Set<String> DENSITIES = Set.of("fitting", "desk", "bench");
    private static final Set<String> UNITS = Set.of("usual", "metric", "inch");
    private final Sights sights;

    /** Makes the page. */
    public ScreenPage(Sights sights) {
        this.sights = sights;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/who", ctx -> {
            Visit visit = new Visit(ctx);
            if (visit.actor().isPresent()) {
                visit.lead("/me");
            } else {
                form(visit, "who.jte", "Who is here?");
            }
        });
        routes.get("/screen", ctx -> form(new Visit(ctx), "screen.jte", "Screen"));
        routes.get("/projects", ctx -> form(new Visit(ctx), "projects.jte", "Projects"));
        // no act: where people are known, nobody says by a form who they are
        routes.post("/who", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> {
                String person = visit.field("person");
                boolean known = sight.definition().shop().people().find(person).isPresent();
                visit.remember("person", known ? person : "");
                visit.lead(visit.field("back"));
            });
        });
        routes.post(
                "/screen",
                ctx -> {
                    Visit visit = new Visit(ctx);
                    keep(visit, "theme", THEMES);
                    keep(visit, "density", DENSITIES);
                    keep(visit, "units", UNITS);
                    visit.lead("/screen?back=" + Visit.encoded(visit.field("back")));
                },
                Asks.to(Act.KEEP_SELF));
        routes.post(
                "/projects",
                ctx -> {
                    Visit visit = new Visit(ctx);
                    visit.remember("project", visit.field("project"));
                    visit.lead("/");
                },
                Asks.to(Act.KEEP_SELF));
    }

    private static void keep(Visit visit, String name, Set<String> known) {
        String value = visit.field(name);
        if (known.contains(value)) {
            visit.remember(name, value);
        }
    }

    private void form(Visit visit, String template, String title) {
        Frame frame = sights.anyFrame(visit, title, "");
        String back = Visit.local(visit.query("back"));
        sights.show(
                visit,
                template,
                frame,
                new ScreenView(
                        back,
                        visit.units()
                                .map(u -> u.name().toLowerCase(java.util.Locale.ROOT))
                                .orElse("usual")));
    }

    /**
     * What these pages show beside their frame.
     *
     * @param back the page to come back to
     * @param units {@code usual}, {@code metric} or {@code inch}
     */
    public record ScreenView(String back, String units) {
        /** The themes with their words. */
        public List<Frame.Choice> themes(String chosen) {
            return choices(chosen, "machine", "as the machine", "day", "day", "night", "night");
        }

        /** The densities with their words. */
        public List<Frame.Choice> densities(String chosen) {
            return choices(chosen, "fitting", "as it fits", "bench", "bench: large", "desk", "desk: dense");
        }

        /** The units with their words. */
        public List<Frame.Choice> unitChoices() {
            return choices(units, "usual", "the project's own", "metric", "metric", "inch", "inch");
        }

        private static List<Frame.Choice> choices(String chosen, String... pairs) {
            List<Frame.Choice> all = new java.util.ArrayList<>();
            for (int i = 0; i < pairs.length; i += 2) {
                all.add(new Frame.Choice(pairs[i], pairs[i + 1], pairs[i].equals(chosen)));
            }
            return all;
        }
    }
}
