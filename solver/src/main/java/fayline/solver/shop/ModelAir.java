package fayline.solver.shop;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import fayline.flow.plan.Place;
import fayline.solver.shop.ShopCase.Item;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** In one room, dust ends and settles before wet work begins, or begins after it. */
final class ModelAir {
    private final ShopCase shop;
    private final Standing standing;
    private final Range range;
    private final CpModel model;
    private final StepVars[] vars;
    private final ModelPlaces places;
    private final boolean hinted;
    private final int settles;

    ModelAir(
            ShopCase shop,
            Standing standing,
            Range range,
            CpModel model,
            boolean hinted,
            StepVars[] vars,
            ModelPlaces places) {
        this.shop = shop;
        this.standing = standing;
        this.range = range;
        this.model = model;
        this.hinted = hinted;
        this.vars = vars;
        this.places = places;
        settles = Slots.up(shop.work.dustSettlesMin());
    }

    void add() {
        Set<String> rooms = new TreeSet<>();
        shop.work.places().stream().filter(p -> p.kind() == Place.Kind.STAND).forEach(p -> rooms.add(p.room()));
        for (Item dust : shop.items) {
            for (Item wet : dust.is("dust") ? shop.items : List.<Item>of()) {
                boolean free = range.isFree(dust.index) || range.isFree(wet.index);
                if (wet.is("wet") && free && meet(dust, wet)) {
                    rooms.forEach(r -> apart(dust, wet, r));
                }
            }
        }
    }

    /** Whether their ranges leave it open which comes first. */
    private boolean meet(Item dust, Item wet) {
        return firstStart(dust) < lastHandsEnd(wet) && firstStart(wet) < lastHandsEnd(dust) + settles;
    }

    private int firstStart(Item i) {
        StepVars v = vars[i.index];
        return v == null ? standing.start(i.index) : v.starts().nextSetBit(0);
    }

    private int lastHandsEnd(Item i) {
        StepVars v = vars[i.index];
        return v == null ? standing.handsEnd(i.index) : v.handsEnds().length() - 1;
    }

    private LinearArgument start(Item i) {
        StepVars v = vars[i.index];
        return v == null ? LinearExpr.constant(standing.start(i.index)) : v.start();
    }

    private LinearArgument handsEnd(Item i) {
        StepVars v = vars[i.index];
        return v == null ? LinearExpr.constant(standing.handsEnd(i.index)) : v.handsEnd();
    }

    private void apart(Item dust, Item wet, String room) {
        boolean first = standing.handsEnd(dust.index) + settles <= standing.start(wet.index);
        boolean then = standing.handsEnd(wet.index) <= standing.start(dust.index);
        boolean bothHere = isHere(dust, room) && isHere(wet, room);
        if (bothHere && !first && !then) {
            // Dust that stops for the wet work, as it stands: finer than the model can say.
            return;
        }
        for (Literal a : places.inRoom(dust, room)) {
            for (Literal b : places.inRoom(wet, room)) {
                BoolVar dustFirst = model.newBoolVar("dust first");
                if (hinted) {
                    model.addHint(dustFirst, first);
                }
                List<Literal> here = new ArrayList<>(List.of(a, b));
                here.add(dustFirst);
                model.addGreaterOrEqual(start(wet), ModelSteps.plus(handsEnd(dust), settles))
                        .onlyEnforceIf(here.toArray(Literal[]::new));
                here.set(2, dustFirst.not());
                model.addGreaterOrEqual(start(dust), handsEnd(wet)).onlyEnforceIf(here.toArray(Literal[]::new));
            }
        }
    }

    private boolean isHere(Item item, String room) {
        return standing.of(item).places().stream()
                .map(shop.places::get)
                .anyMatch(p ->
                        p != null && p.kind() == Place.Kind.STAND && p.room().equals(room));
    }
}
