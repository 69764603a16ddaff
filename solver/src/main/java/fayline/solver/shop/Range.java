package fayline.solver.shop;

import fayline.solver.shop.ShopCase.Item;
import fayline.solver.shop.ShopCase.Tie;
import java.util.List;
import java.util.stream.IntStream;

/** Which steps are free, and between which slots each may begin as far as the steps around it say. */
final class Range {
    private final ShopCase shop;
    private final Standing standing;
    private final boolean[] free;
    private final int[] first;
    private final int[] last;
    private final int[] least;

    Range(ShopCase shop, Standing standing, boolean[] free) {
        this.shop = shop;
        this.standing = standing;
        this.free = free;
        int n = shop.items.size();
        first = new int[n];
        last = new int[n];
        least = new int[n];
        for (Item i : shop.items) {
            least[i.index] = Math.min(
                    i.modes.stream().mapToInt(Mode::slots).min().orElse(0),
                    standing.handsEnd(i.index) - standing.start(i.index));
        }
        List<Integer> order = IntStream.range(0, n)
                .boxed()
                .sorted((a, b) -> Integer.compare(standing.start(a), standing.start(b)))
                .toList();
        order.forEach(this::forward);
        for (int i = n - 1; i >= 0; i--) {
            backward(order.get(i));
        }
    }

    boolean[] free() {
        return free.clone();
    }

    boolean isFree(int item) {
        return free[item];
    }

    int first(int item) {
        return first[item];
    }

    int last(int item) {
        return last[item];
    }

    private void forward(int i) {
        Item item = shop.items.get(i);
        int from = Math.max(shop.slots.first, Slots.up(item.earliestMin));
        for (Tie tie : item.ties) {
            if (tie.item().isPresent()) {
                int u = tie.item().get();
                from = Math.max(
                        from,
                        free[u]
                                ? first[u] + lead(u, tie)
                                : Slots.up(standing.momentMin(u, tie.link().from())));
            }
        }
        first[i] = free[i] ? Math.min(from, standing.start(i)) : standing.start(i);
    }

    private int lead(int u, Tie tie) {
        return tie.link().from().equals("start") ? 0 : least[u];
    }

    private void backward(int i) {
        Item item = shop.items.get(i);
        int to = shop.slots.last - least[i];
        for (int v : item.next) {
            for (Tie tie : shop.items.get(v).ties) {
                if (tie.item().filter(u -> u == i).isPresent()) {
                    to = Math.min(to, last[v] - lead(i, tie));
                }
            }
        }
        last[i] = free[i] ? Math.max(to, standing.start(i)) : standing.start(i);
    }
}
