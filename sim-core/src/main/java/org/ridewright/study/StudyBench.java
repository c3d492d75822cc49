package org.ridewright.study;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ridewright.dynamics.RideException;
import org.ridewright.quantity.UnfitValueException;
import org.ridewright.ride.Measured;
import org.ridewright.ride.RideBench;
import org.ridewright.ride.Scenario;
import org.ridewright.ride.Wanted;

/** Rides the runs of a study. */
public final class StudyBench implements Bench {
    private final Study study;
    private final Set<Wanted> wanted;
    private final RideBench bench = new RideBench();

    public StudyBench(Study study) {
        this.study = study;
        wanted = EnumSet.noneOf(Wanted.class);
        wanted.addAll(RideMeasure.wantedBy(study.questions()));
    }

    @Override
    public Outcome ride(Trial trial) {
        try {
            return ridden(trial);
        } catch (RuntimeException defect) {
            // one run in ten thousand must not be the end of the others
            return Outcome.failed(Outcome.defect(defect));
        }
    }

    private Outcome ridden(Trial trial) {
        Variant variant = study.variants().get(trial.variant());
        Scenario scenario;
        try {
            scenario = trial.texts().isEmpty()
                    ? variant.scenario().asWritten()
                    : variant.scenario().with(trial.texts());
        } catch (UnfitValueException unfit) {
            return oneByOne(variant, trial.texts(), unfit.getMessage());
        }
        List<Outcome.Line> lines = new ArrayList<>();
        for (RideBench.Test test : RideBench.tests(scenario)) {
            lines.add(line(scenario, test));
        }
        return new Outcome(lines, "");
    }

    /** Values with which one vehicle cannot be leave the tests of the others: each with its own changes alone. */
    private Outcome oneByOne(Variant variant, Map<String, String> texts, String why) {
        OwnChanges own = new OwnChanges(variant.scenario(), texts);
        Scenario written = own.written(variant.texts());
        List<Outcome.Line> lines = new ArrayList<>();
        boolean any = false;
        for (int v = 0; v < written.entrants().size() && written.entrants().size() > 1; v++) {
            try {
                Scenario scenario = variant.scenario().with(own.of(v));
                for (RideBench.Test test : RideBench.tests(scenario, v)) {
                    lines.add(line(scenario, test));
                    any = true;
                }
            } catch (UnfitValueException unfit) {
                for (RideBench.Test test : RideBench.tests(written, v)) {
                    lines.add(new Outcome.Line(labels(test), List.of(), unfit.getMessage()));
                }
            }
        }
        return any ? new Outcome(lines, "") : Outcome.failed(why);
    }

    /** Vehicle, load case, road and speed. */
    public static List<String> labels(RideBench.Test test) {
        return List.of(
                test.vehicle().name(),
                test.load().name(),
                test.road().name(),
                test.plan().title());
    }

    private Outcome.Line line(Scenario scenario, RideBench.Test test) {
        List<String> labels = labels(test);
        try {
            Measured measured = bench.measure(scenario, test, wanted);
            List<Double> answers =
                    study.questions().stream().map(q -> q.of(measured)).toList();
            return new Outcome.Line(labels, answers, "");
        } catch (RideException given) {
            return new Outcome.Line(labels, List.of(), given.getMessage());
        } catch (RuntimeException defect) {
            return new Outcome.Line(labels, List.of(), Outcome.defect(defect));
        }
    }
}
