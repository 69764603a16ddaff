package fayline.solver.shop;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.Literal;
import fayline.solver.shop.ShopCase.Item;
import fayline.solver.shop.ShopCase.Stay;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToLongFunction;

/** A model of a case in which some steps are free and the others stay where they stand, with the standing plan as its start. */
final class ShopModel {
    final CpModel model = new CpModel();
    private final boolean[] free;
    private final StepVars[] vars;
    private final ModelPlaces places;

    /** Where a solution puts a free step. */
    record Spot(Item item, int start, int handsEnd, Mode mode, List<String> places) {}

    /**
     * Builds the model.
     *
     * @param hinted whether the standing plan is given as a start
     */
    ShopModel(ShopCase shop, Standing standing, boolean[] free, boolean hinted) {
        this.free = free.clone();
        for (int i = 0; i < free.length; i++) {
            this.free[i] &= !standing.isInterleaved(i);
        }
        Range range = new Range(shop, standing, this.free);
        vars = new ModelSteps(shop, standing, range, model, hinted).build();
        new ModelCrew(shop, standing, range, model).add(vars);
        places = new ModelPlaces(shop, standing, range, model, hinted, vars);
        places.add();
        new ModelAir(shop, standing, range, model, hinted, vars, places).add();
        new ModelGoal(shop, standing, model, hinted, vars).add();
    }

    /** Which steps the model may move. */
    boolean[] free() {
        return free.clone();
    }

    /** Reads a solution. */
    Map<Integer, Spot> read(ToLongFunction<LinearArgument> value) {
        Map<Integer, Spot> spots = new TreeMap<>();
        for (StepVars v : vars) {
            if (v != null) {
                int used = 0;
                for (int i = 0; i < v.modes().size(); i++) {
                    used = value.applyAsLong(v.uses().get(i)) == 1 ? i : used;
                }
                spots.put(
                        v.item().index,
                        new Spot(
                                v.item(),
                                (int) value.applyAsLong(v.start()),
                                (int) value.applyAsLong(v.handsEnd()),
                                v.modes().get(used),
                                places(v.item(), value)));
            }
        }
        return spots;
    }

    private List<String> places(Item item, ToLongFunction<LinearArgument> value) {
        List<String> at = new ArrayList<>();
        for (Stay stay : item.stays) {
            for (String place : stay.hold().candidates()) {
                Optional<? extends Literal> takes = places.takes(stay, place);
                if (takes.isPresent() && value.applyAsLong((LinearArgument) takes.get()) == 1) {
                    at.add(place);
                }
            }
        }
        return at;
    }
}
