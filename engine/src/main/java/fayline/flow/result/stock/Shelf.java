package fayline.flow.result.stock;

import fayline.flow.project.stock.Lot;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The lots of one thing with what is left of each; taken from first expired, first out. Amounts in SI of the thing's kind. */
final class Shelf {
    private static final Comparator<Row> FIRST_OUT = Comparator.comparing((Row r) -> r.expires.orElse(LocalDate.MAX))
            .thenComparing(r -> r.from)
            .thenComparing(r -> r.id);

    private final ZoneId zone;
    private final List<Row> rows = new ArrayList<>();

    Shelf(ZoneId zone) {
        this.zone = zone;
    }

    private static final class Row {
        private final String id;
        private final LocalDate from;
        private final Optional<LocalDate> expires;
        private double left;

        Row(String id, LocalDate from, Optional<LocalDate> expires, double left) {
            this.id = id;
            this.from = from;
            this.expires = expires;
            this.left = left;
        }

        boolean good(LocalDate day) {
            return !from.isAfter(day) && !expires.filter(e -> e.isBefore(day)).isPresent();
        }
    }

    void put(Lot lot, double amount) {
        put(lot.id(), lot.received(), lot.lastDay(), amount);
    }

    void put(String id, LocalDate from, Optional<LocalDate> expires, double amount) {
        rows.add(new Row(id, from, expires, amount));
        rows.sort(FIRST_OUT);
    }

    /** Takes from one lot as far as it goes. */
    void takeFrom(String lot, double amount) {
        rows.stream().filter(r -> r.id.equals(lot)).findFirst().ifPresent(r -> r.left = Math.max(0, r.left - amount));
    }

    /** Takes an amount at a moment; returns what is missing. */
    double take(Instant at, double amount) {
        LocalDate day = at.atZone(zone).toLocalDate();
        double open = amount;
        for (Row r : rows) {
            if (r.good(day) && open > 0) {
                double taken = Math.min(r.left, open);
                r.left -= taken;
                open -= taken;
            }
        }
        return open > amount * 1e-9 ? open : 0;
    }

    /** Takes an amount from what comes after a moment; returns what is missing. */
    double takeComing(Instant after, double amount) {
        LocalDate day = after.atZone(zone).toLocalDate();
        double open = amount;
        for (Row r : rows) {
            if (r.from.isAfter(day) && open > 0) {
                double taken = Math.min(r.left, open);
                r.left -= taken;
                open -= taken;
            }
        }
        return open > amount * 1e-9 ? open : 0;
    }

    /** What is left and may be used on a day. */
    double good(Instant at) {
        LocalDate day = at.atZone(zone).toLocalDate();
        return rows.stream().filter(r -> r.good(day)).mapToDouble(r -> r.left).sum();
    }

    /** What is left and out of date on a day. */
    double expired(Instant at) {
        LocalDate day = at.atZone(zone).toLocalDate();
        return rows.stream()
                .filter(r -> r.expires.filter(e -> e.isBefore(day)).isPresent())
                .mapToDouble(r -> r.left)
                .sum();
    }

    /** Lots that may be used on a day and are not empty, the first to take leading. */
    List<String> lots(Instant at) {
        LocalDate day = at.atZone(zone).toLocalDate();
        return rows.stream()
                .filter(r -> r.good(day) && r.left > 0)
                .map(r -> r.id)
                .toList();
    }
}
