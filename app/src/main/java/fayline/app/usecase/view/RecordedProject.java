package fayline.app.usecase.view;

import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.project.Definition;
import fayline.flow.record.RecordState;
import fayline.flow.result.ProjectCalculator;
import fayline.flow.result.ProjectResult;
import java.time.Instant;
import java.util.Optional;

/**
 * One project with what the record holds of it and what follows from both, without a plan: for what is told of the past.
 *
 * @param definition its definition
 * @param result what follows
 * @param record what the entries amount to
 * @param now the moment up to which what happened counts
 */
public record RecordedProject(Definition definition, ProjectResult result, RecordState record, Instant now) {
    /**
     * Looks.
     *
     * @param shop the record
     * @param project the project
     * @return empty where the shop has no such project, or where its definition cannot be read
     */
    public static Optional<RecordedProject> of(ShopRecord shop, String project) {
        Instant now = shop.minute();
        RecordState record = shop.state();
        Projects projects = Projects.of(shop, record, now);
        return projects.all().stream()
                .filter(p -> p.definition().facts().id().equals(project))
                .findFirst()
                .map(p -> new RecordedProject(
                        p.definition(), ProjectCalculator.calculate(p, projects.rates()), record, now));
    }
}
