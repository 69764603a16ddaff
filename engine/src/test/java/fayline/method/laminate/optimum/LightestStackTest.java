package fayline.method.laminate.optimum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fayline.basis.numeric.RandomStream;
import fayline.method.laminate.Laminate;
import fayline.method.laminate.Plies;
import fayline.method.laminate.Ply;
import fayline.method.laminate.SectionLoad;
import fayline.method.laminate.strength.Criterion;
import fayline.method.laminate.strength.FirstPlyCalculator;
import fayline.method.laminate.strength.PlyStrength;
import fayline.method.laminate.strength.Strength;
import fayline.method.laminate.strength.StrongPly;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The search against every stack written down one after the other and judged by the laminate alone. */
class LightestStackTest {
    private static final PlyStrength AS4 = PlyStrength.of(1950e6, 1480e6, 48e6, 200e6, 79e6);
    private static final PlyStrength GLASS = PlyStrength.of(1140e6, 570e6, 35e6, 114e6, 72e6);

    private static PlyChoice choice(String name, double angle) {
        boolean glass = name.startsWith("glass");
        Ply ply = glass
                ? new Ply(Plies.gpa(53.48, 17.7, 5.83, 0.278, 8.6e-6, 26.4e-6), 0.25e-3, angle)
                : new Ply(Plies.AS4, 0.15e-3, angle);
        return new PlyChoice(
                name + " " + angle, StrongPly.of(ply, glass ? GLASS : AS4), glass ? 0.5 : 0.24, glass ? 12 : 55);
    }

    private static final List<PlyChoice> CHOICES =
            List.of(choice("carbon", 0), choice("carbon", 45), choice("carbon", -45), choice("glass", 90));

    /** Lightest, then cheapest, by writing down all of them. */
    private static double[] bruteForce(LightestStack q) {
        double[] best = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        int n = q.choices().size();
        for (int plies = 1; plies <= q.rules().mostPlies(); plies++) {
            boolean odd = plies % 2 == 1;
            if (odd && !q.rules().oddMiddle()) {
                continue;
            }
            int half = (plies + 1) / 2;
            for (long code = 0; code < Math.round(Math.pow(n, half)); code++) {
                List<PlyChoice> stack = stack(q, plies, code);
                double mass = stack.stream().mapToDouble(PlyChoice::massKgPerM2).sum();
                double cost = stack.stream().mapToDouble(PlyChoice::costPerM2).sum();
                boolean better = mass < best[0] - 1e-9 || (mass < best[0] + 1e-9 && cost < best[1] - 1e-9);
                if (better && keeps(q, stack) && does(q, stack)) {
                    best = new double[] {mass, cost};
                }
            }
        }
        return best;
    }

    private static List<PlyChoice> stack(LightestStack q, int plies, long code) {
        PlyChoice[] all = new PlyChoice[plies];
        long rest = code;
        for (int k = 0; k < (plies + 1) / 2; k++) {
            all[k] = q.choices().get((int) (rest % q.choices().size()));
            all[plies - 1 - k] = all[k];
            rest /= q.choices().size();
        }
        return List.of(all);
    }

    private static boolean keeps(LightestStack q, List<PlyChoice> stack) {
        int run = 0;
        double last = Double.NaN;
        int turned = 0;
        for (PlyChoice c : stack) {
            double a = c.ply().ply().angleDeg();
            run = a == last ? run + 1 : 1;
            last = a;
            if (run > q.rules().mostTogether()) {
                return false;
            }
            turned += a == 45 ? 1 : a == -45 ? -1 : 0;
        }
        return !q.rules().balanced() || turned == 0;
    }

    private static boolean does(LightestStack q, List<PlyChoice> stack) {
        List<StrongPly> plies = stack.stream().map(PlyChoice::ply).toList();
        Laminate l = Laminate.of(plies.stream().map(StrongPly::ply).toList());
        Wanted w = q.wanted();
        boolean stiff = 1 / l.compliance(0, 0) >= w.stretchXNPerM()
                && 1 / l.compliance(1, 1) >= w.stretchYNPerM()
                && 1 / l.compliance(2, 2) >= w.shearNPerM()
                && 1 / l.compliance(3, 3) >= w.bendXNm()
                && 1 / l.compliance(4, 4) >= w.bendYNm();
        return stiff
                && w.loads().stream()
                        .allMatch(load -> FirstPlyCalculator.calculate(new Strength(plies, load, w.criterion()))
                                        .first()
                                        .orElseThrow()
                                        .ratio()
                                >= w.leastRatio());
    }

    private static List<Wanted> drawn() {
        RandomStream chance = new RandomStream(5, 0);
        List<Wanted> all = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            List<SectionLoad> loads = i % 3 == 0
                    ? List.of()
                    : List.of(new SectionLoad(
                            6e4 * chance.nextUnit(),
                            2e4 * (chance.nextUnit() - 0.5),
                            1e4 * chance.nextUnit(),
                            i % 3 == 1 ? 0 : 4 * chance.nextUnit(),
                            0,
                            0,
                            -60));
            all.add(new Wanted(
                    4e7 * chance.nextUnit() + 1,
                    1.5e7 * chance.nextUnit(),
                    8e6 * chance.nextUnit(),
                    i % 2 == 0 ? 0 : 6 * chance.nextUnit(),
                    i % 2 == 0 ? 0 : 2 * chance.nextUnit(),
                    loads,
                    i % 2 == 0 ? Criterion.tsaiWu(-0.5) : Criterion.hashin(),
                    1.5));
        }
        return all;
    }

    @Test
    void should_find_what_writing_down_every_stack_finds() {
        int found = 0;
        int i = 0;
        for (Wanted w : drawn()) {
            StackRules rules = new StackRules(10, i % 2 == 0, 1 + i % 4, i % 3 != 0);
            LightestStack q = new LightestStack(CHOICES, rules, w, Long.MAX_VALUE);
            double[] all = bruteForce(q);
            LightestStackResult r = LightestStackCalculator.calculate(q);
            assertThat(r.proven()).isTrue();
            if (Double.isInfinite(all[0])) {
                assertThat(r.plies()).isEmpty();
            } else {
                found++;
                assertThat(r.massKgPerM2()).as("mass " + i).isCloseTo(all[0], within(1e-9));
                assertThat(r.costPerM2()).as("cost " + i).isCloseTo(all[1], within(1e-6));
                assertThat(keeps(q, r.plies())).isTrue();
                assertThat(does(q, r.plies())).isTrue();
                assertThat(r.boundKgPerM2()).isEqualTo(r.massKgPerM2());
            }
            i++;
        }
        assertThat(found).isBetween(8, 23);
    }

    @Test
    void should_look_at_fewer_stacks_than_there_are() {
        Wanted stiff = new Wanted(4e7, 1e7, 5e6, 0, 0, List.of(), Criterion.hashin(), 1);
        LightestStackResult r = LightestStackCalculator.calculate(
                new LightestStack(CHOICES, new StackRules(16, true, 3, true), stiff, Long.MAX_VALUE));
        assertThat(r.proven()).isTrue();
        assertThat(r.plies()).isNotEmpty();
        assertThat((double) r.nodes()).isLessThan(r.space() / 5);
    }

    @Test
    void should_say_that_nothing_is_proven_when_it_must_give_up() {
        Wanted much = new Wanted(0, 0, 0, 0, 0, List.of(SectionLoad.inPlane(4e5, 2e5, 1e5)), Criterion.hashin(), 1.5);
        LightestStackResult r = LightestStackCalculator.calculate(
                new LightestStack(CHOICES, new StackRules(40, true, 3, true), much, 2000));
        assertThat(r.proven()).isFalse();
        assertThat(r.nodes()).isEqualTo(2000);
        assertThat(r.boundKgPerM2()).isPositive();
    }

    @Test
    void should_refuse_a_question_that_asks_nothing() {
        assertThatThrownBy(() -> new Wanted(0, 0, 0, 0, 0, List.of(), Criterion.hashin(), 1))
                .hasMessageContaining("nothing is asked");
        assertThatThrownBy(() -> new StackRules(41, true, 3, true)).hasMessageContaining("1 to 40");
        assertThatThrownBy(() -> new StackRules(8, true, 0, true)).hasMessageContaining("1 or more");
    }
}
