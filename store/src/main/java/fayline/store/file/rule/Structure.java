package fayline.store.file.rule;

import fayline.store.file.yaml.Problems;

/** Everything that must hold before anything can be computed. */
public final class Structure {
    private Structure() {}

    /** Tells what does not hold together. */
    public static void check(Draft draft, Problems problems) {
        new References(draft, problems).check();
        new WishRules(draft, problems).check();
        new Doubles(draft, problems).check();
        new Spans(draft, problems).check();
        new Circles(draft, problems).check();
        new HandRules(draft, problems).check();
        new PieceRules(draft, problems).check();
        new Stacks(draft, problems).check();
        draft.recipes().forEach(r -> new RecipeRules(draft, r, problems).check());
        draft.fits().forEach(f -> new FitRules(f, problems).check());
        draft.chains().forEach(c -> new ChainRules(draft, c, problems).check());
        new MakeRules(draft, problems).check();
    }
}
