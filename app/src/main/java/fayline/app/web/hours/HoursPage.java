package fayline.app.web.hours;

import fayline.app.pdf.book.BuilderLogPdf;
import fayline.app.usecase.hours.LookAtHours;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Printing;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.basis.units.TimeSpan;
import fayline.flow.project.local.LocalRules;
import fayline.flow.result.hours.HoursResult;
import fayline.flow.result.hours.TaskShare;
import io.javalin.config.RoutesConfig;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/** Who worked how long on what; the builder's share by the local list; the builder's log on paper. */
public final class HoursPage implements Page {
    private static final double PERCENT = 100;
    private final Sights sights;

    /** Makes the page. */
    public HoursPage(Sights sights) {
        this.sights = sights;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/hours", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(
                    visit,
                    sight -> sights.show(
                            visit,
                            "hours/hours.jte",
                            sights.frame(visit, sight, "Hours", "/hours"),
                            view(visit, sight)));
        });
        routes.get("/hours/log.pdf", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> log(visit, sight));
        });
    }

    private static Optional<LocalDate> day(Visit visit, String name) {
        String asked = visit.query(name);
        try {
            return asked.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(asked));
        } catch (DateTimeParseException e) {
            throw Refusal.input("\"" + asked + "\" is no day. Expected one such as 2026-03-02.");
        }
    }

    private static HoursView view(Visit visit, Sight sight) {
        HoursResult all = LookAtHours.of(sight.view());
        HoursResult shown = LookAtHours.between(all, day(visit, "from"), day(visit, "to"));
        LocalRules local = sight.definition().local();
        OptionalDouble share = all.share();
        boolean enough = local.leastShare()
                .map(l -> share.isPresent() && share.getAsDouble() >= l.ratio())
                .orElse(true);
        return new HoursView(
                visit.query("from"),
                visit.query("to"),
                hours(sight, shown.minutes()),
                List.of(
                        table(sight, "Person", shown.by(b -> b.person()), sight::personName),
                        table(sight, "Part or joint", shown.by(b -> b.made()), sight::madeName),
                        table(sight, "Sort of work", shown.by(b -> b.kind().key()), k -> k.replace('-', ' '))),
                local.authority(),
                all.tasks().stream().map(t -> task(sight, t)).toList(),
                share.isEmpty()
                        ? ""
                        : percent(share.getAsDouble()) + " of the tasks begun is the builders' own"
                                + local.leastShare()
                                        .map(l -> ", at least " + percent(l.ratio()) + " is asked for")
                                        .orElse(""),
                enough,
                "/hours/log.pdf?from=" + Visit.encoded(visit.query("from")) + "&to="
                        + Visit.encoded(visit.query("to")));
    }

    private static HoursView.Table table(
            Sight sight, String by, Map<String, Double> minutes, UnaryOperator<String> name) {
        return new HoursView.Table(
                by,
                minutes.entrySet().stream()
                        .sorted(Map.Entry.<String, Double>comparingByValue(Comparator.reverseOrder())
                                .thenComparing(Map.Entry.comparingByKey()))
                        .map(e -> new HoursView.Row(name.apply(e.getKey()), hours(sight, e.getValue())))
                        .toList());
    }

    private static HoursView.Task task(Sight sight, TaskShare t) {
        return new HoursView.Task(
                t.task().name(),
                String.format(Locale.ROOT, "%.0f", t.task().points()),
                hours(sight, t.ownMin()),
                t.paidMin() > 0 ? hours(sight, t.paidMin()) : "",
                t.task().bought().ratio() > 0 ? percent(t.task().bought().ratio()) : "",
                t.share().isPresent() ? percent(t.share().getAsDouble()) : "not begun");
    }

    private static String percent(double share) {
        // Rounded down: a share must not look reached before it is.
        return (int) Math.floor(share * PERCENT + 1e-9) + " %";
    }

    private static String hours(Sight sight, double minutes) {
        return String.format(Locale.ROOT, "%.1f h", TimeSpan.ofMinutes(minutes).hours());
    }

    private static void log(Visit visit, Sight sight) {
        HoursResult shown = LookAtHours.between(LookAtHours.of(sight.view()), day(visit, "from"), day(visit, "to"));
        byte[] pdf = BuilderLogPdf.print(
                sight.view(), shown, Printing.paper(visit), sight.time().full());
        visit.send(pdf, "application/pdf", "log-" + sight.definition().facts().id() + ".pdf");
    }
}
