package fayline.method.fitup.scheme;

import fayline.basis.numeric.DenseMatrix;
import fayline.basis.numeric.SemidefiniteFactor;
import fayline.method.fitup.Station;
import fayline.method.uncertainty.Distribution;
import fayline.method.uncertainty.Distribution.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;

/** Turns locators into rows of stops and the errors that act on them, and notes what is missing and what was assumed. */
final class StopRows {
    private final Set<Assumption> allowed;
    private final List<Stop> stops = new ArrayList<>();
    private final List<StopError> errors = new ArrayList<>();
    private final List<Missing> missing = new ArrayList<>();
    private final List<Assumption> assumed = new ArrayList<>();

    private StopRows(Set<Assumption> allowed) {
        this.allowed = allowed;
    }

    static StopRows of(Scheme scheme, Set<Assumption> allowed) {
        StopRows rows = new StopRows(allowed);
        scheme.locators().forEach(rows::add);
        scheme.creepMm().ifPresent(creep -> {
            for (int j = 0; j < rows.stops.size(); j++) {
                rows.single("creep while curing", rows.stops.get(j).id(), j, Distribution.rectangular(0, creep));
            }
        });
        return rows;
    }

    List<Stop> stops() {
        return List.copyOf(stops);
    }

    List<StopError> errors() {
        return List.copyOf(errors);
    }

    List<Missing> missing() {
        return List.copyOf(missing);
    }

    List<Assumption> assumed() {
        return assumed.stream().distinct().toList();
    }

    /** A number that was given, or assumed where that is allowed; otherwise it is noted as missing. */
    double number(OptionalDouble given, String what, String about, Optional<Assumption> offer) {
        if (given.isPresent()) {
            double v = given.getAsDouble();
            if (!(v >= 0) || Double.isInfinite(v)) {
                throw new IllegalArgumentException(what + " of " + about + " is " + v);
            }
            return v;
        }
        if (offer.isPresent() && allowed.contains(offer.get())) {
            assumed.add(offer.get());
            return offer.get().valueMm();
        }
        missing.add(new Missing(what, about, offer));
        return 0;
    }

    private void add(Locator locator) {
        if (locator instanceof Locator.TapeMark t) {
            tape(t);
        } else if (locator instanceof Locator.Spacer s) {
            int j = row(s.stop());
            double u =
                    number(s.deviationMm(), "deviation of the spacer", s.stop().id(), Optional.of(Assumption.SPACER));
            single("spacer", s.stop().id(), j, Distribution.normal(0, u));
            if (s.notPressedMm() > 0) {
                double half = s.notPressedMm() / 2;
                single("not pressed home", s.stop().id(), j, Distribution.rectangular(half, half));
            }
        } else if (locator instanceof Locator.Block b) {
            block(b);
        } else if (locator instanceof Locator.Pins p) {
            pins(p);
        } else if (locator instanceof Locator.Known k) {
            single("stop", k.stop().id(), row(k.stop()), k.error());
        } else if (locator instanceof Locator.Together t) {
            together(t);
        }
    }

    private int row(Stop stop) {
        stops.add(stop);
        return stops.size() - 1;
    }

    private void single(String name, String stop, int row, Distribution spread) {
        errors.add(new StopError.Along(name + " " + stop, stop, spread, List.of(new StopError.Effect(row, 1))));
    }

    private void tape(Locator.TapeMark t) {
        String id = t.stop().id();
        double half = number(t.halfWidthMm(), "half-width of the tape mark", id, Optional.of(Assumption.TAPE_MARK));
        double slant = number(t.parallaxMm(), "reading the mark on a slant", id, Optional.of(Assumption.TAPE_PARALLAX));
        Station c = t.stop().contact().drawn();
        List<Stop> rows = new ArrayList<>(List.of(t.stop()));
        if (t.bothWays()) {
            rows.add(new Stop(
                    new Station(id + " along", c.at(), -c.ny(), c.nx()),
                    0,
                    t.stop().stiffness()));
        }
        for (Stop stop : rows) {
            int j = row(stop);
            single("tape mark", stop.id(), j, Distribution.rectangular(0, half));
            single("slanted look at", stop.id(), j, Distribution.normal(0, slant));
        }
    }

    private void block(Locator.Block b) {
        String ids = String.join(", ", b.stops().stream().map(Stop::id).toList());
        double face = number(b.faceMm(), "deviation of the block's faces", ids, Optional.of(Assumption.BLOCK_FACE));
        double place = number(b.placeMm(), "deviation of the block's place", ids, Optional.of(Assumption.BLOCK_PLACE));
        List<StopError.Effect> all = new ArrayList<>();
        for (Stop s : b.stops()) {
            int j = row(s);
            single("block face", s.id(), j, Distribution.normal(0, face));
            all.add(new StopError.Effect(j, 1));
        }
        errors.add(new StopError.Along("place of the block", "block", Distribution.normal(0, place), all));
    }

    private void pins(Locator.Pins p) {
        double play = number(p.playMm(), "play of the pins, hole less pin", p.name(), Optional.empty());
        double place = number(
                p.positionMm(), "deviation of the holes' places", p.name(), Optional.of(Assumption.PIN_POSITION));
        String one = p.name() + " 1";
        String two = p.name() + " 2";
        int x = row(Stop.fixed(new Station(one + " x", p.pin1(), 1, 0)));
        int y = row(Stop.fixed(new Station(one + " y", p.pin1(), 0, 1)));
        int square = row(Stop.fixed(new Station(
                two,
                p.pin2(),
                p.pin1().yMm() - p.pin2().yMm(),
                p.pin2().xMm() - p.pin1().xMm())));
        errors.add(new StopError.InDisc("play of " + one, one, play / 2, x, OptionalInt.of(y)));
        errors.add(new StopError.InDisc("play of " + two, two, play / 2, square, OptionalInt.empty()));
        single("hole of", one, x, Distribution.normal(0, place));
        single("hole of", one, y, Distribution.normal(0, place));
        single("hole of", two, square, Distribution.normal(0, place));
    }

    private void together(Locator.Together t) {
        int first = stops.size();
        t.stops().forEach(this::row);
        DenseMatrix f = SemidefiniteFactor.of(DenseMatrix.of(t.covarianceMm2().stream()
                .map(r -> r.stream().mapToDouble(Double::doubleValue).toArray())
                .toArray(double[][]::new)));
        for (int k = 0; k < f.cols(); k++) {
            int part = k;
            List<StopError.Effect> effects = IntStream.range(0, f.rows())
                    .mapToObj(j -> new StopError.Effect(first + j, f.get(j, part)))
                    .toList();
            errors.add(new StopError.Along(
                    "joint error " + (k + 1),
                    "stops together",
                    Distribution.ofStandardDeviation(Shape.NORMAL, 0, 1),
                    effects));
        }
    }
}
