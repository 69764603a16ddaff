package fayline.method.cure;

import fayline.basis.units.Temperature;
import fayline.basis.units.TemperatureDifference;
import fayline.basis.units.TimeSpan;
import java.util.ArrayList;
import java.util.List;

/**
 * Temperature against time since mixing, in pieces that are constant or straight. Before the first and after the last piece
 * the end value holds.
 *
 * @param pieces the pieces in order of time, without gaps; at least one
 */
public record TemperatureHistory(List<Piece> pieces) {
    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException if there is no piece, a piece runs backwards or there is a gap
     */
    public TemperatureHistory {
        pieces = List.copyOf(pieces);
        if (pieces.isEmpty()) {
            throw new IllegalArgumentException("a temperature history needs at least one piece");
        }
        for (int i = 0; i < pieces.size(); i++) {
            Piece p = pieces.get(i);
            if (!(p.toS() >= p.fromS())
                    || (i > 0 && p.fromS() != pieces.get(i - 1).toS())) {
                throw new IllegalArgumentException("the times of a temperature history must rise without gaps, at "
                        + p.fromS() + " s to " + p.toS() + " s");
            }
        }
    }

    /** One temperature for ever. */
    public static TemperatureHistory constant(Temperature temperature) {
        return new TemperatureHistory(List.of(new Piece(0, 0, temperature.kelvins(), temperature.kelvins())));
    }

    /**
     * Steps of constant temperature one after the other, from mixing on.
     *
     * @param steps the steps; at least one
     */
    public static TemperatureHistory steps(List<Step> steps) {
        List<Piece> pieces = new ArrayList<>();
        double at = 0;
        for (Step s : steps) {
            double end = at + s.span().seconds();
            pieces.add(new Piece(
                    at, end, s.temperature().kelvins(), s.temperature().kelvins()));
            at = end;
        }
        return new TemperatureHistory(pieces);
    }

    /**
     * Straight lines between points, as a logger or an oven programme gives them.
     *
     * @param points the points in order of time; at least one
     */
    public static TemperatureHistory lines(List<Point> points) {
        if (points.size() == 1) {
            double t = points.get(0).at().seconds();
            double k = points.get(0).temperature().kelvins();
            return new TemperatureHistory(List.of(new Piece(t, t, k, k)));
        }
        List<Piece> pieces = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            pieces.add(new Piece(
                    a.at().seconds(),
                    b.at().seconds(),
                    a.temperature().kelvins(),
                    b.temperature().kelvins()));
        }
        return new TemperatureHistory(pieces);
    }

    /** When the last piece ends. */
    public TimeSpan end() {
        return new TimeSpan(last().toS());
    }

    /** The temperature that holds after the last piece. */
    public Temperature lastTemperature() {
        return new Temperature(last().endKelvins());
    }

    private Piece last() {
        return pieces.get(pieces.size() - 1);
    }

    /** The temperature at a time since mixing. */
    public Temperature at(TimeSpan time) {
        return new Temperature(kelvinsAt(time.seconds()));
    }

    /**
     * The temperature at a time.
     *
     * @param seconds time since mixing in seconds
     * @return kelvins
     */
    public double kelvinsAt(double seconds) {
        for (Piece p : pieces) {
            if (seconds < p.toS()) {
                return p.kelvinsAt(seconds);
            }
        }
        return last().endKelvins();
    }

    /** The coldest temperature from mixing to a time. */
    public Temperature coldestUntil(TimeSpan time) {
        return new Temperature(extreme(time.seconds(), false));
    }

    /** The hottest temperature from mixing to a time. */
    public Temperature hottestUntil(TimeSpan time) {
        return new Temperature(extreme(time.seconds(), true));
    }

    private double extreme(double seconds, boolean hottest) {
        double found = kelvinsAt(0);
        for (Piece p : pieces) {
            if (p.fromS() <= seconds && p.toS() > 0) {
                double start = p.kelvinsAt(Math.max(0, p.fromS()));
                double end = p.kelvinsAt(Math.min(seconds, p.toS()));
                found = hottest ? Math.max(found, Math.max(start, end)) : Math.min(found, Math.min(start, end));
            }
        }
        double now = kelvinsAt(seconds);
        return hottest ? Math.max(found, now) : Math.min(found, now);
    }

    /** The same history warmer or colder by a difference. */
    public TemperatureHistory plus(TemperatureDifference difference) {
        double d = difference.kelvins();
        return new TemperatureHistory(pieces.stream()
                .map(p -> new Piece(p.fromS(), p.toS(), p.startKelvins() + d, p.endKelvins() + d))
                .toList());
    }

    /**
     * One piece.
     *
     * @param fromS start in seconds since mixing
     * @param toS end in seconds since mixing
     * @param startKelvins temperature at the start
     * @param endKelvins temperature at the end; a straight line between
     */
    public record Piece(double fromS, double toS, double startKelvins, double endKelvins) {
        /** The temperature in the piece, its end values held outside; in kelvins. */
        public double kelvinsAt(double seconds) {
            if (seconds <= fromS || toS <= fromS) {
                return seconds >= toS ? endKelvins : startKelvins;
            }
            double share = Math.min(1, (seconds - fromS) / (toS - fromS));
            return startKelvins + share * (endKelvins - startKelvins);
        }
    }

    /**
     * A time at one temperature.
     *
     * @param span how long
     * @param temperature at which temperature
     */
    public record Step(TimeSpan span, Temperature temperature) {}

    /**
     * A point of a straight-line history.
     *
     * @param at time since mixing
     * @param temperature the temperature then
     */
    public record Point(TimeSpan at, Temperature temperature) {}
}
