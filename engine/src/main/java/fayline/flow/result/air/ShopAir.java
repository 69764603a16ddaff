package fayline.flow.result.air;

import fayline.basis.units.Fraction;
import fayline.basis.units.Temperature;
import fayline.flow.project.Climate;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.DoubleBinaryOperator;

/**
 * The temperature of the shop's air at any moment: up to now from readings, where there are any near, else and after now as
 * forecast, else as usual. Of several probes the coldest counts for what must cure and the warmest for what shuts or softens.
 * Between two readings of one probe that lie no more than {@value #JOIN_HOURS} h apart the temperature runs straight; up to
 * {@value #HOLD_HOURS} h from a lone reading the reading and the expected air are both considered and the safe one taken. The
 * spans are common practice, no source. Temperatures are never averaged over time. Immutable.
 */
public final class ShopAir {
    private static final int JOIN_HOURS = 12;
    private static final int HOLD_HOURS = 6;
    private static final int EXPECTED_DAYS = 14;
    private static final LocalTime MORNING = LocalTime.of(7, 0);
    private static final LocalTime EVENING = LocalTime.of(19, 0);

    private final ZoneId zone;
    private final Instant now;
    private final List<Climate.Reading> readings;
    private final Map<String, NavigableMap<Instant, Climate.Reading>> byProbe = new HashMap<>();
    private final Map<LocalDate, Climate.Day> days = new HashMap<>();
    private final Climate.Usual usual;

    /**
     * Makes the air.
     *
     * @param climate readings, forecast and the usual day of the definition
     * @param more readings beyond those; of two readings of one probe at one moment these count
     * @param zone the shop's zone: the day value holds from 07:00 to 19:00 in it
     * @param now readings after this moment are left out
     */
    public ShopAir(Climate climate, Collection<Climate.Reading> more, ZoneId zone, Instant now) {
        this.zone = zone;
        this.now = now;
        this.usual = climate.usual();
        List<Climate.Reading> all = new ArrayList<>(climate.readings());
        all.addAll(more);
        all.removeIf(r -> r.at().isAfter(now));
        all.sort(Comparator.comparing(Climate.Reading::at));
        this.readings = List.copyOf(all);
        for (Climate.Reading r : all) {
            byProbe.computeIfAbsent(r.probe(), p -> new TreeMap<>()).put(r.at(), r);
        }
        climate.forecast().forEach(d -> days.put(d.date(), d));
    }

    /** The moment up to which readings count. */
    public Instant now() {
        return now;
    }

    /** Readings up to now in the order of time. */
    public List<Climate.Reading> readings() {
        return readings;
    }

    /** The latest reading. */
    public Optional<Climate.Reading> latest() {
        return readings.isEmpty() ? Optional.empty() : Optional.of(readings.get(readings.size() - 1));
    }

    /** The temperature that counts for what must cure. */
    public Temperature coldest(Instant at) {
        return Temperature.ofKelvins(over(at, Math::min));
    }

    /** The temperature that counts for what shuts, and for pots. */
    public Temperature warmest(Instant at) {
        return Temperature.ofKelvins(over(at, Math::max));
    }

    /** Whether the temperature at a moment rests on readings. */
    public boolean measured(Instant at) {
        return byProbe.values().stream().anyMatch(p -> near(p, at));
    }

    /** Whether a day stands in the forecast; otherwise the usual day is taken, which is an assumption. */
    public boolean forecast(LocalDate day) {
        return days.containsKey(day);
    }

    /** The expected temperature, readings apart: the day value from 07:00 to 19:00, the night value otherwise. */
    public Temperature expected(Instant at) {
        ZonedDateTime local = at.atZone(zone);
        LocalTime time = local.toLocalTime();
        boolean day = !time.isBefore(MORNING) && time.isBefore(EVENING);
        LocalDate date = time.isBefore(MORNING) ? local.toLocalDate().minusDays(1) : local.toLocalDate();
        Climate.Day known = days.get(date);
        if (known == null) {
            return day ? usual.day() : usual.night();
        }
        return day ? known.day() : known.night();
    }

    /** The expected temperature of a day's working hours. */
    public Temperature expectedByDay(LocalDate day) {
        Climate.Day known = days.get(day);
        return known == null ? usual.day() : known.day();
    }

    /**
     * The warmest working day that is expected in the next two weeks: what batches are reckoned with before a day is set.
     *
     * @param of the zone in which days are counted
     */
    public Temperature warmestDay(ZoneId of) {
        LocalDate today = now.atZone(of).toLocalDate();
        Temperature warmest = expectedByDay(today);
        for (int i = 1; i < EXPECTED_DAYS; i++) {
            Temperature day = expectedByDay(today.plusDays(i));
            warmest = day.compareTo(warmest) > 0 ? day : warmest;
        }
        return warmest;
    }

    /** The expected relative humidity of a day. */
    public Fraction expectedHumidity(LocalDate day) {
        Climate.Day known = days.get(day);
        return known == null ? usual.humidity() : known.humidity();
    }

    private double over(Instant at, DoubleBinaryOperator safe) {
        double expectedK = expected(at).kelvins();
        if (at.isAfter(now)) {
            return expectedK;
        }
        double found = Double.NaN;
        for (NavigableMap<Instant, Climate.Reading> probe : byProbe.values()) {
            if (near(probe, at)) {
                double k = read(probe, at, expectedK, safe);
                found = Double.isNaN(found) ? k : safe.applyAsDouble(found, k);
            }
        }
        return Double.isNaN(found) ? expectedK : found;
    }

    private boolean near(NavigableMap<Instant, Climate.Reading> probe, Instant at) {
        if (at.isAfter(now)) {
            return false;
        }
        Map.Entry<Instant, Climate.Reading> before = probe.floorEntry(at);
        Map.Entry<Instant, Climate.Reading> after = probe.ceilingEntry(at);
        return (before != null && seconds(before.getKey(), at) <= HOLD_HOURS * 3600L)
                || (after != null && seconds(at, after.getKey()) <= HOLD_HOURS * 3600L)
                || joined(before, after);
    }

    private static double read(
            NavigableMap<Instant, Climate.Reading> probe, Instant at, double expectedK, DoubleBinaryOperator safe) {
        Map.Entry<Instant, Climate.Reading> before = probe.floorEntry(at);
        Map.Entry<Instant, Climate.Reading> after = probe.ceilingEntry(at);
        if (before != null && after != null && joined(before, after)) {
            long span = seconds(before.getKey(), after.getKey());
            double part = span == 0 ? 0 : (double) seconds(before.getKey(), at) / span;
            double a = before.getValue().air().kelvins();
            return a + part * (after.getValue().air().kelvins() - a);
        }
        double found = expectedK;
        if (before != null && seconds(before.getKey(), at) <= HOLD_HOURS * 3600L) {
            found = safe.applyAsDouble(found, before.getValue().air().kelvins());
        }
        if (after != null && seconds(at, after.getKey()) <= HOLD_HOURS * 3600L) {
            found = safe.applyAsDouble(found, after.getValue().air().kelvins());
        }
        return found;
    }

    private static boolean joined(
            Map.@org.jspecify.annotations.Nullable Entry<Instant, Climate.Reading> before,
            Map.@org.jspecify.annotations.Nullable Entry<Instant, Climate.Reading> after) {
        return before != null && after != null && seconds(before.getKey(), after.getKey()) <= JOIN_HOURS * 3600L;
    }

    private static long seconds(Instant from, Instant to) {
        return to.getEpochSecond() - from.getEpochSecond();
    }
}
