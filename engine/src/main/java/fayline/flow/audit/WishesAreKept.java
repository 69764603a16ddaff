package fayline.flow.audit;

import fayline.flow.plan.WishWords;
import fayline.flow.plan.WorkWish;
import java.util.ArrayList;
import java.util.List;

/** Who, where and when of a step not begun are as the lead wishes them. */
final class WishesAreKept implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (WorkWish wish : audited.work().wishes()) {
            audited.job(wish.step())
                    .filter(job -> !job.begun() && !isOver(audited, wish) && !isKept(job, wish))
                    .ifPresent(job -> found.add(broken(
                            job.id(),
                            job.id() + " is planned for " + job.crew() + " at "
                                    + job.planned().places() + " from "
                                    + audited.tell(job.planned().start()) + "; expected what is wished: "
                                    + WishWords.clause(audited.work(), wish))));
        }
        return found;
    }

    private static boolean isOver(Audited audited, WorkWish wish) {
        return wish.before().isPresent()
                && !wish.before().get().isAfter(audited.work().now());
    }

    private static boolean isKept(Job job, WorkWish wish) {
        List<String> places = job.planned().places();
        return switch (wish.kind()) {
            case WITH -> job.crew().contains(wish.on());
            case WITHOUT -> !job.crew().contains(wish.on());
            case AT -> places.contains(wish.on());
            case AWAY -> !places.contains(wish.on());
            case START ->
                wish.from().stream().noneMatch(job.planned().start()::isBefore)
                        && wish.before().stream().allMatch(job.planned().start()::isBefore);
        };
    }
}
