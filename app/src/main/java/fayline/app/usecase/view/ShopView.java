package fayline.app.usecase.view;

import fayline.basis.finding.InputProblem;
import fayline.flow.audit.BrokenRule;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.project.Definition;
import fayline.flow.record.RecordState;
import fayline.flow.result.ProjectResult;
import fayline.flow.result.rate.LearnedRates;
import fayline.flow.result.state.ShopState;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * A shop at a moment, seen from one of its projects. The plan sees all projects, the rest shows the chosen one.
 *
 * @param now the moment, on a whole minute
 * @param zone the shop's zone
 * @param projects all projects, in the order in which they joined
 * @param definition the chosen project's definition
 * @param state what has happened to it, as the calculator was told
 * @param result what follows from both
 * @param rates what finished steps of all projects teach
 * @param work the work of all projects
 * @param plan the plan of all projects
 * @param audit every rule that the plan breaks, as the auditor finds it
 * @param told when today the crew was told the plan against which moves are shown; empty where that is this morning's
 * @param moved what moved since then, soonest first
 * @param record what the entries amount to
 * @param stores the stores of the chosen project, reckoned when they are asked for
 * @param problems cautions about the chosen project's definition
 */
public record ShopView(
        Instant now,
        ZoneId zone,
        List<ProjectName> projects,
        Definition definition,
        ShopState state,
        ProjectResult result,
        LearnedRates rates,
        Work work,
        Plan plan,
        List<BrokenRule> audit,
        Optional<Instant> told,
        List<Moved> moved,
        RecordState record,
        StoresOnce stores,
        List<InputProblem> problems) {
    /** Copies the lists. */
    public ShopView {
        projects = List.copyOf(projects);
        audit = List.copyOf(audit);
        moved = List.copyOf(moved);
        problems = List.copyOf(problems);
    }

    /** The id of the chosen project. */
    public String project() {
        return definition.facts().id();
    }

    /**
     * A project by its name.
     *
     * @param id its id
     * @param name the aircraft's name
     * @param serial its serial
     */
    public record ProjectName(String id, String name, String serial) {}
}
