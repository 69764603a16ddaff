package fayline.app.web.fitwhy;

import fayline.app.usecase.fit.FitLines;
import fayline.app.web.fit.FitWhys;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Visit;
import fayline.app.web.why.WhyView;
import fayline.basis.finding.Figure;
import fayline.basis.units.Amount;
import fayline.flow.project.fit.Fit;
import fayline.flow.reading.FitReading;
import fayline.flow.result.fit.FitAdvice;
import fayline.flow.result.fit.FitResult;
import fayline.flow.result.fit.LaterState;
import fayline.flow.result.fit.StateReadings;
import fayline.flow.result.fit.StationValue;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Station;
import fayline.method.fitup.Vector;
import fayline.method.fitup.scheme.Assumption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** What the figures of one fit rest on, each with the place it comes from. */
record Grounds(Sight sight, FitResult result, FitLines lines, boolean assume) {
    /** To 0.01 mm or 0.1 thou. */
    String mm(double mm) {
        return Amount.mm(mm, 2).in(sight.format().system());
    }

    String place(double xMm, double yMm) {
        return "x " + Amount.placeMm(xMm, 1).in(sight.format().system()) + ", y "
                + Amount.placeMm(yMm, 1).in(sight.format().system());
    }

    String place(Vector at) {
        return place(at.x(), at.y()) + ", z "
                + Amount.placeMm(at.z(), 1).in(sight.format().system());
    }

    static WhyView.Input computed(String name, String value) {
        return new WhyView.Input(name, value, "computed", false, "");
    }

    static WhyView.Input computed(String name, String value, String link) {
        return new WhyView.Input(name, value, "computed: see why", false, link);
    }

    /** The page that says why. */
    String why(String of) {
        return "/fit/" + Visit.encoded(result.fit().id()) + "/why?of=" + of + (assume ? "&assume=yes" : "");
    }

    /** What the definition says, by the keys under which it stands; assumed where it says nothing. */
    WhyView.Input written(String name, String value, String... keys) {
        return lines.line(keys)
                .map(l -> FitWhys.written(name, value, l))
                .orElseGet(() -> new WhyView.Input(name, value, "assumed: the definition does not say", true, ""));
    }

    /** Every reading of a station's gap in a state, as typed, with who took it. */
    List<WhyView.Input> readings(String state, String station) {
        List<WhyView.Input> all = new ArrayList<>();
        value(state, station).ifPresent(v -> {
            v.typed().stream().filter(t -> t.kind().tellsGap()).forEach(t -> all.add(reading(state, t)));
            long told = v.typed().stream().filter(t -> t.kind().tellsGap()).count();
            v.gap()
                    .filter(g -> told > 1)
                    .ifPresent(g -> all.add(computed(station + ": mean of " + told, mm(g.gapMm()))));
        });
        return all;
    }

    /** Every reading of a station's flush in a state, as typed, with who took it. */
    List<WhyView.Input> flushes(String state, String station) {
        return value(state, station).stream()
                .flatMap(v -> v.typed().stream())
                .filter(t -> t.kind() == FitReading.Kind.FLUSH)
                .map(t -> reading(state, t))
                .toList();
    }

    /** A row's gap at the temperature at which the move is sought, where that is another than the shop's. */
    List<WhyView.Input> warmed(FitAdvice a, int row) {
        return a.shop().matters()
                ? List.of(computed(
                        a.rows().get(row).station().id() + ": brought to "
                                + Amount.degC(a.shop().soughtDegC().orElseThrow())
                                        .in(sight.format().system()),
                        mm(a.rows().get(row).gapMm()),
                        why("heat")))
                : List.of();
    }

    private Optional<StationValue> value(String state, String station) {
        return result.states().stream()
                .filter(s -> s.state().id().equals(state))
                .map(StateReadings::stations)
                .flatMap(List::stream)
                .filter(v -> v.station().id().equals(station))
                .findFirst();
    }

    private WhyView.Input reading(String state, FitReading r) {
        String value = r.typed() + (r.noGoMm().isPresent() ? " goes in, the next leaf does not" : "");
        StringBuilder origin = new StringBuilder("measured: read by ")
                .append(sight.personName(r.by()))
                .append(", ")
                .append(sight.time().at(r.at()));
        if (!r.instrument().isEmpty()) {
            origin.append(", with ").append(r.instrument());
        }
        if (r.temperatureDegC().isPresent()) {
            origin.append(", at ")
                    .append(Amount.degC(r.temperatureDegC().getAsDouble())
                            .in(sight.format().system()));
        }
        origin.append("; entry ").append(r.seq());
        return new WhyView.Input(
                r.station() + ": " + said(r.kind()) + " as read",
                value,
                origin.toString(),
                false,
                "/fit/" + Visit.encoded(result.fit().id()) + "/read?state=" + Visit.encoded(state) + "&kind="
                        + r.kind().word() + "&at=" + Visit.encoded(r.station()));
    }

    private static String said(FitReading.Kind kind) {
        return switch (kind) {
            case GAP -> "gap";
            case FLUSH -> "flush";
            case CASTING -> "test casting";
        };
    }

    /** What a station must come to, and what is allowed for later states. */
    List<WhyView.Input> wanted(FitRow row) {
        Fit fit = result.fit();
        String id = row.station().id();
        List<WhyView.Input> all = new ArrayList<>();
        fit.station(id).ifPresent(s -> {
            all.add(written(
                    id + ": gap wanted",
                    fit.gapAt(s).asTyped() + " ± " + fit.gapToleranceAt(s).asTyped(),
                    own(id, "gap")));
        });
        List<LaterState> later = result.later().stream()
                .filter(l -> l.gapMm() != 0 || l.move().isSome())
                .toList();
        if (!later.isEmpty()) {
            all.add(computed(
                    id + ": wanted now",
                    mm(row.lowerMm()) + " to " + mm(row.upperMm()) + ", allowing for "
                            + later.stream().map(l -> l.state().name()).collect(Collectors.joining(", "))));
        }
        return all;
    }

    /** The states to come that are allowed for, each with who says what it does. */
    List<WhyView.Input> later() {
        return result.later().stream()
                .map(l -> l.learned()
                        ? new WhyView.Input("Still to come: " + l.state().name(), l.origin(), "learned", false, "")
                        : written(
                                "Still to come: " + l.state().name(),
                                l.origin(),
                                "states",
                                l.state().id(),
                                "disturbs"))
                .toList();
    }

    /** The keys of a station's own wish, else of the fit's. */
    private String[] own(String station, String key) {
        String[] own = {"stations", station, key};
        return lines.line(own).isPresent() ? own : new String[] {key};
    }

    WhyView.Input station(FitRow row) {
        Station at = row.station();
        Vector n = at.normal();
        Vector s = at.relief().surface();
        return written(
                at.id() + ": place and way of the gap" + (at.isCurved() ? ", way the surface looks" : ""),
                at.isCurved()
                        ? place(at.place())
                                + String.format(
                                        Locale.ROOT,
                                        "; %.3f, %.3f, %.3f; %.3f, %.3f, %.3f",
                                        n.x(),
                                        n.y(),
                                        n.z(),
                                        s.x(),
                                        s.y(),
                                        s.z())
                        : place(at.at().xMm(), at.at().yMm())
                                + String.format(Locale.ROOT, "; %.3f, %.3f", n.x(), n.y()),
                "stations",
                at.id());
    }

    WhyView.Input reading(OptionalDouble mm, String name, String key, Assumption usual) {
        if (mm.isPresent()) {
            return written(name, mm(mm.getAsDouble()), "gauge", key);
        }
        return assume
                ? new WhyView.Input(name, mm(usual.valueMm()), "assumed: common practice, no source", true, "")
                : new WhyView.Input(name, "not given", "nobody gave it", true, "");
    }

    /** A figure of the engine in the screen's units. */
    WhyView.Shown figure(Figure f, String... keys) {
        return new WhyView.Shown(
                f.name(),
                sight.say(f.told()),
                f.formula(),
                f.inputs().stream()
                        .map(i -> i.origin() == Figure.Origin.ENTERED
                                ? written(i.name(), sight.say(i.told()), keys)
                                : new WhyView.Input(
                                        i.name(),
                                        sight.say(i.told()),
                                        i.origin()
                                                .name()
                                                .toLowerCase(Locale.ROOT)
                                                .replace('_', ' '),
                                        i.origin() == Figure.Origin.ASSUMED,
                                        ""))
                        .toList(),
                f.source(),
                f.cautions(),
                false);
    }
}
