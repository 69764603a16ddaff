package fayline.app.usecase.view;

import fayline.app.usecase.shop.RecordedState;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.project.Definition;
import fayline.flow.record.RecordState;
import fayline.flow.result.Expanded;
import fayline.flow.result.ProjectCalculator;
import fayline.flow.result.rate.LearnedRates;
import fayline.flow.result.rate.ProjectTimes;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * The projects of a shop up to a moment, and what their finished steps teach all of them.
 *
 * @param all each project that can be read, its steps at the recipes' own rates
 * @param rates what is learned
 */
record Projects(List<Expanded> all, LearnedRates rates) {
    static Projects of(ShopRecord shop, RecordState record, Instant now) {
        List<Expanded> all = new ArrayList<>();
        List<ProjectTimes> times = new ArrayList<>();
        for (Definition d : shop.wholeDefinitions()) {
            String id = d.facts().id();
            Expanded project = ProjectCalculator.expand(d, RecordedState.of(record, id, now), shop.plannedSets(id));
            all.add(project);
            times.add(ProjectTimes.of(project.definition(), project.state(), project.steps()));
        }
        return new Projects(List.copyOf(all), LearnedRates.of(times));
    }
}
