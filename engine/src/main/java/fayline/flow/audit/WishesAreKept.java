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
                    .filter(job -> !job.begun() && !wish.isPast(audited.work().now()) && !isKept(job, wish))
                    .ifPresent(job -> found.add(broken(
                            job.id(),
                            job.id() + " is planned for " + job.crew() + " at "
                                    + job.planned().places() + " from "
                                    + audited.tell(job.planned().start()) + "; expected what is wished: "
                                    + WishWords.clause(audited.work(), wish))));
        }
        return found;
    }

    private static boolean isKept(Job job, WorkWish wish) {
        return wish.isKept(job.crew(), job.planned().places(), job.planned().start());
    }
}
