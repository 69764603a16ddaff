package fayline.solver.shop;

import fayline.solver.shop.ShopCase.Item;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;

/** Parts of a plan to be planned anew while the rest stays [godard2005]: some days, some parts and joints, or one person's work. */
final class Neighbourhoods {
    private final ShopCase shop;
    private final SplittableRandom random;
    private int turn;

    Neighbourhoods(ShopCase shop, int seed) {
        this.shop = shop;
        random = new SplittableRandom(seed);
    }

    /** The next part, of about so many steps. */
    boolean[] next(Standing standing, int size) {
        Set<Integer> chosen = switch (turn++ % 4) {
            case 0, 2 -> days(standing, size);
            case 1 -> parts(size);
            default -> person(standing, size);
        };
        boolean[] free = new boolean[shop.items.size()];
        chosen.forEach(i -> free[i] = true);
        return free;
    }

    private List<Integer> byStart(Standing standing) {
        return shop.items.stream()
                .map(i -> i.index)
                .sorted(Comparator.comparingInt((Integer i) -> standing.start(i))
                        .thenComparingInt(i -> i))
                .toList();
    }

    private Set<Integer> days(Standing standing, int size) {
        List<Integer> order = byStart(standing);
        int from = random.nextInt(Math.max(1, order.size() - size / 2));
        return new LinkedHashSet<>(order.subList(from, Math.min(order.size(), from + size)));
    }

    private Set<Integer> parts(int size) {
        List<String> made =
                shop.items.stream().map(Neighbourhoods::made).distinct().toList();
        Set<Integer> chosen = new LinkedHashSet<>();
        List<String> open = new ArrayList<>(made);
        while (chosen.size() < size && !open.isEmpty()) {
            String one = open.remove(random.nextInt(open.size()));
            shop.items.stream().filter(i -> made(i).equals(one)).forEach(i -> chosen.add(i.index));
        }
        return chosen;
    }

    private static String made(Item i) {
        return i.step.project() + "/" + i.step.made();
    }

    /** One person's steps from some day on, and what comes right before and after them. */
    private Set<Integer> person(Standing standing, int size) {
        String who = shop.work
                .people()
                .get(random.nextInt(Math.max(1, shop.work.people().size())))
                .id();
        List<Integer> mine = byStart(standing).stream()
                .filter(i -> standing.people(i).contains(who))
                .toList();
        Set<Integer> chosen = new LinkedHashSet<>();
        int from = mine.isEmpty() ? 0 : random.nextInt(mine.size());
        for (int k = from; k < mine.size() && chosen.size() < size; k++) {
            Item item = shop.items.get(mine.get(k));
            chosen.add(item.index);
            item.ties.forEach(t -> t.item().ifPresent(chosen::add));
            chosen.addAll(item.next);
        }
        return chosen.isEmpty() ? days(standing, size) : chosen;
    }
}
