package fayline.flow.result.shop;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.flow.plan.WorkStep;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Part;
import fayline.flow.project.recipe.StepKind;
import fayline.flow.project.shop.Mould;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.state.ShopState.MouldFacts;
import fayline.flow.result.step.MouldUse;
import fayline.flow.result.step.StepResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Release state of moulds: the definition's state at the start, and since then one pull for each demoulding that is over and a
 * touch-up for each release that is over; a release while a full one is due counts as full. Where the state is
 * known better it counts instead (common practice, no source).
 */
public final class Moulds {
    private final Definition definition;
    private final ShopState state;
    private final List<StepResult> steps;

    /**
     * Looks at the moulds.
     *
     * @param definition the definition
     * @param state what has happened
     * @param steps every step, in the order of the definition
     */
    public Moulds(Definition definition, ShopState state, List<StepResult> steps) {
        this.definition = definition;
        this.state = state;
        this.steps = steps;
    }

    /** Every mould's state now. */
    public List<MouldUse> uses() {
        List<MouldUse> uses = new ArrayList<>();
        for (Mould mould : definition.shop().moulds()) {
            MouldFacts facts =
                    Optional.ofNullable(state.moulds().get(mould.id())).orElseGet(() -> counted(mould));
            uses.add(new MouldUse(
                    mould.id(),
                    facts.pulls(),
                    facts.sinceTouchUp(),
                    facts.sinceFull(),
                    due(facts.sinceTouchUp(), mould.touchUpEvery()),
                    due(facts.sinceFull(), mould.fullEvery()),
                    next(mould).map(StepResult::made).orElse("")));
        }
        return uses;
    }

    /** What is due before a part is laid, where its recipe has no release step or a full release is due. */
    public List<Finding> findings(List<MouldUse> uses) {
        List<Finding> findings = new ArrayList<>();
        for (MouldUse use : uses) {
            if (use.next().isEmpty() || !(use.touchUpDue() || use.fullDue())) {
                continue;
            }
            boolean released = steps.stream()
                    .anyMatch(s -> s.made().equals(use.next())
                            && s.kind() == StepKind.RELEASE
                            && s.work().state() != WorkStep.State.DONE);
            String name = definition.shop().moulds().get(use.mould()).name();
            if (use.fullDue()) {
                findings.add(new Finding(
                        Severity.CAUTION,
                        use.mould(),
                        name + " has been pulled " + use.sinceFull()
                                + " times since its last full release: strip, seal and" + " release it fully before "
                                + use.next() + ".",
                        "the definition"));
            } else if (!released) {
                findings.add(new Finding(
                        Severity.STOP,
                        use.mould(),
                        name + " has been pulled " + use.sinceTouchUp()
                                + " times since its last touch-up and the recipe of " + use.next()
                                + " has no release step to come: touch it up first.",
                        "the definition"));
            }
        }
        return findings;
    }

    private MouldFacts counted(Mould mould) {
        int pulls = mould.pulls();
        int sinceTouchUp = mould.sinceTouchUp();
        int sinceFull = mould.sinceFull();
        for (StepResult s : inTime(mould)) {
            if (s.kind() == StepKind.RELEASE) {
                sinceTouchUp = 0;
                sinceFull = due(sinceFull, mould.fullEvery()) ? 0 : sinceFull;
            } else {
                pulls++;
                sinceTouchUp++;
                sinceFull++;
            }
        }
        return new MouldFacts(pulls, sinceTouchUp, sinceFull);
    }

    /** Releases and demouldings of a mould that are over, as they happened. */
    private List<StepResult> inTime(Mould mould) {
        return of(mould).stream()
                .filter(s -> s.kind() == StepKind.RELEASE || s.kind() == StepKind.DEMOULD)
                .filter(s -> s.work().actual().handsEnded().isPresent())
                .sorted((a, b) -> a.work()
                        .actual()
                        .handsEnded()
                        .orElseThrow()
                        .compareTo(b.work().actual().handsEnded().orElseThrow()))
                .toList();
    }

    private Optional<StepResult> next(Mould mould) {
        return of(mould).stream()
                .filter(s -> s.kind() == StepKind.LAY_UP && s.work().state() == WorkStep.State.TODO)
                .findFirst();
    }

    private List<StepResult> of(Mould mould) {
        return steps.stream()
                .filter(s -> definition
                        .parts()
                        .find(s.made())
                        .flatMap(Part::mould)
                        .filter(mould.id()::equals)
                        .isPresent())
                .toList();
    }

    private static boolean due(int since, int every) {
        return every > 0 && since >= every;
    }
}
