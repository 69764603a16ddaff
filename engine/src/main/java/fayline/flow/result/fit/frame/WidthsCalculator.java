package fayline.flow.result.fit.frame;

import fayline.flow.project.fit.frame.FrameWidth;
import fayline.flow.reading.WidthReading;
import fayline.flow.reading.WidthReading.State;
import fayline.flow.result.fit.frame.WidthAnswer.Allowance;
import fayline.flow.result.fit.frame.WidthAnswer.Bonded;
import fayline.flow.result.fit.frame.WidthAnswer.MadeTrial;
import fayline.flow.result.fit.frame.WidthAnswer.Next;
import fayline.flow.result.fit.frame.WidthAnswer.Stage;
import fayline.method.fitup.frame.trial.Trial;
import fayline.method.fitup.frame.trial.TrialFit;
import fayline.method.fitup.frame.trial.TrialFitCalculator;
import fayline.method.fitup.frame.trial.TrialFitResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What the widths read at a frame amount to. Readings of one trial and state are averaged; a trial counts once it was read bare
 * and with the sheet clamped on. What the bond itself changed on the opposite hand is allowed for, unless the definition enters
 * it; how the clamped width followed there is taken for a first trial here.
 */
public final class WidthsCalculator {
    private WidthsCalculator() {}

    /** Answers the question. */
    public static WidthsResult calculate(WidthsQuestion question) {
        return new WidthsResult(
                question.fit(),
                question.fit().frame().widths().stream()
                        .map(w -> answer(question, w))
                        .toList());
    }

    /** What this hand's frame teaches the opposite one, from whole trials. */
    public static List<WidthLesson> teaches(WidthsResult result) {
        List<WidthLesson> all = new ArrayList<>();
        for (WidthAnswer a : result.widths()) {
            whole(a.trials())
                    .reduce((x, y) -> y)
                    .ifPresent(last -> all.add(new WidthLesson(
                            a.width().id(),
                            result.fit().name(),
                            last.bareMm().getAsDouble(),
                            last.clampedMm().getAsDouble(),
                            a.trial()
                                    .filter(t -> t.followFrom() == TrialFitResult.From.TRIALS)
                                    .map(t -> OptionalDouble.of(t.follow()))
                                    .orElse(OptionalDouble.empty()),
                            a.bonded().map(Bonded::tookMm).orElse(OptionalDouble.empty()),
                            a.width().deviation().value().millimetres())));
        }
        return List.copyOf(all);
    }

    private static WidthAnswer answer(WidthsQuestion q, FrameWidth width) {
        List<MadeTrial> trials = trials(q.readings(), width);
        Optional<WidthLesson> lesson =
                q.taught().stream().filter(l -> l.width().equals(width.id())).findFirst();
        Allowance allowance = allowance(width, lesson);
        double aim = width.wanted().value().millimetres() - allowance.mm();
        Optional<TrialFitResult> trial = trial(width, trials, aim, lesson);
        Optional<Bonded> bonded = bonded(width, trials);
        return new WidthAnswer(
                width,
                stage(trial, bonded),
                trials,
                allowance,
                aim,
                trial,
                trial.isEmpty() && lesson.isPresent()
                        ? OptionalDouble.of(lesson.get().bareForMm(aim))
                        : OptionalDouble.empty(),
                lesson,
                bonded,
                next(trials, trial));
    }

    private static Stream<MadeTrial> whole(List<MadeTrial> trials) {
        return trials.stream().filter(MadeTrial::whole);
    }

    private static List<MadeTrial> trials(List<WidthReading> readings, FrameWidth width) {
        List<WidthReading> mine =
                readings.stream().filter(r -> r.width().equals(width.id())).toList();
        return mine.stream()
                .map(WidthReading::trial)
                .distinct()
                .sorted()
                .map(n -> made(n, mine.stream().filter(r -> r.trial() == n).toList()))
                .toList();
    }

    private static MadeTrial made(int number, List<WidthReading> readings) {
        return new MadeTrial(
                number,
                readings,
                mean(readings, State.BARE),
                mean(readings, State.CLAMPED),
                mean(readings, State.BONDED));
    }

    private static OptionalDouble mean(List<WidthReading> readings, State state) {
        return readings.stream()
                .filter(r -> r.state() == state)
                .mapToDouble(WidthReading::valueMm)
                .average();
    }

    private static Allowance allowance(FrameWidth width, Optional<WidthLesson> lesson) {
        if (width.bondTakes().isPresent()) {
            return new Allowance(
                    width.bondTakes().get().value().millimetres(), OptionalDouble.empty(), "entered in the definition");
        }
        return lesson.filter(l -> l.bondTookMm().isPresent())
                .map(l -> new Allowance(
                        l.bondTookMm().getAsDouble(),
                        OptionalDouble.of(Math.sqrt(2) * l.deviationMm()),
                        "learned from " + l.from() + ", one build"))
                .orElse(Allowance.NONE);
    }

    private static Optional<TrialFitResult> trial(
            FrameWidth width, List<MadeTrial> trials, double aim, Optional<WidthLesson> lesson) {
        List<Trial> made = whole(trials)
                .map(t -> new Trial(t.bareMm().getAsDouble(), t.clampedMm().getAsDouble()))
                .toList();
        if (made.isEmpty() || !(aim > 0)) {
            return Optional.empty();
        }
        OptionalDouble follow = lesson.map(WidthLesson::follow).orElse(OptionalDouble.empty());
        return Optional.of(TrialFitCalculator.calculate(new TrialFit(
                made,
                aim,
                width.tolerance().value().millimetres(),
                width.deviation().value().millimetres(),
                follow.isPresent() ? OptionalDouble.of(Math.min(1, follow.getAsDouble())) : follow)));
    }

    private static Optional<Bonded> bonded(FrameWidth width, List<MadeTrial> trials) {
        Optional<MadeTrial> read =
                trials.stream().filter(t -> t.bondedMm().isPresent()).reduce((x, y) -> y);
        return read.map(t -> {
            double mm = t.bondedMm().getAsDouble();
            double off = mm - width.wanted().value().millimetres();
            OptionalDouble before =
                    whole(trials).reduce((x, y) -> y).map(MadeTrial::clampedMm).orElse(OptionalDouble.empty());
            return new Bonded(
                    mm,
                    off,
                    Math.abs(off) <= width.tolerance().value().millimetres(),
                    before.isPresent() ? OptionalDouble.of(mm - before.getAsDouble()) : before);
        });
    }

    private static Stage stage(Optional<TrialFitResult> trial, Optional<Bonded> bonded) {
        if (bonded.isPresent()) {
            return Stage.BONDED;
        }
        return trial.filter(t -> t.verdict() == TrialFitResult.Verdict.READY).isPresent() ? Stage.GO : Stage.WAIT;
    }

    /** Bare, then clamped on, then the next trial; once a trial came out, as bonded. */
    private static Next next(List<MadeTrial> trials, Optional<TrialFitResult> trial) {
        if (trials.isEmpty()) {
            return new Next(1, State.BARE);
        }
        MadeTrial last = trials.get(trials.size() - 1);
        if (last.bareMm().isEmpty()) {
            return new Next(last.number(), State.BARE);
        }
        if (last.clampedMm().isEmpty()) {
            return new Next(last.number(), State.CLAMPED);
        }
        boolean ready =
                trial.filter(t -> t.verdict() == TrialFitResult.Verdict.READY).isPresent();
        return ready ? new Next(last.number(), State.BONDED) : new Next(last.number() + 1, State.BARE);
    }
}
