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
        private final List<Moved> moves = new ArrayList<>();
        private double left;

        Row(String id, LocalDate from, Optional<LocalDate> expires, double left) {
            this.id = id;
            this.from = from;
            this.expires = expires;
            this.left = left;
        }

        void change(Why why, double by) {
            if (by != 0) {
                left += by;
                moves.add(new Moved(why, by, left));
            }
        }

        boolean good(LocalDate day) {
            return !from.isAfter(day) && !expires.filter(e -> e.isBefore(day)).isPresent();
        }
    }

    /**
     * Why a lot is moved.
     *
     * @param at when
     * @param sort what it was
     * @param step the step; empty for none
     * @param seq the entry; 0 for none
     */
    record Why(Instant at, LotStanding.Sort sort, String step, long seq) {}

    /**
     * A move.
     *
     * @param why why
     * @param change what came in, negative what went out
     * @param left what was left then
     */
    record Moved(Why why, double change, double left) {}

    /** A lot with what there was when it was received. */
    void put(Lot lot, Optional<LocalDate> lastDay, double amount) {
        put(lot.id(), lot.received(), lastDay, 0);
        row(lot.id())
                .ifPresent(r -> r.change(
                        new Why(lot.received().atStartOfDay(zone).toInstant(), LotStanding.Sort.OPENING, "", 0),
                        amount));
    }

    void put(String id, LocalDate from, Optional<LocalDate> expires, double amount) {
        rows.add(new Row(id, from, expires, amount));
        rows.sort(FIRST_OUT);
    }

    private Optional<Row> row(String lot) {
        return rows.stream().filter(r -> r.id.equals(lot)).findFirst();
    }

    /** Takes from one lot as far as it goes. */
    void takeFrom(String lot, Why why, double amount) {
        row(lot).ifPresent(r -> r.change(why, -Math.min(r.left, amount)));
    }

    /** Sets what is left of a lot to what was counted. */
    void count(String lot, Why why, double left) {
        row(lot).ifPresent(r -> {
            r.left = left;
            double before =
                    r.moves.isEmpty() ? 0 : r.moves.get(r.moves.size() - 1).left();
            r.moves.add(new Moved(why, left - before, left));
        });
    }

    /** What moved a lot, and what is left of it. */
    List<Moved> moves(String lot) {
        return row(lot).map(r -> List.copyOf(r.moves)).orElse(List.of());
    }

    /** What is left of a lot. */
    double left(String lot) {
        return row(lot).map(r -> r.left).orElse(0.0);
    }

    /** Takes an amount at a moment; returns what is missing. */
    double take(Why why, double amount) {
        LocalDate day = why.at().atZone(zone).toLocalDate();
        double open = amount;
        for (Row r : rows) {
            if (r.good(day) && open > 0) {
                double taken = Math.min(r.left, open);
                r.change(why, -taken);
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
