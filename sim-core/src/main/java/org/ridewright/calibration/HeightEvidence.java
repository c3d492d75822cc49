package org.ridewright.calibration;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.dynamics.VehicleModel;
import org.ridewright.fieldwork.Heights;
import org.ridewright.fieldwork.Heights.Mark;
import org.ridewright.fieldwork.Heights.Settled;
import org.ridewright.fieldwork.Loading;
import org.ridewright.quantity.Measure;

/**
 * How much lower the body hangs with more aboard. Heights themselves depend on where the marks are, which the vehicle file does not say; so each
 * reading after the first is compared with the weighted mean of those before it at the same mark. Such differences are independent where
 * the readings are. A body that nobody made settle hangs anywhere within its friction: an even band about where no friction is held.
 */
final class HeightEvidence implements Evidence {
    private final Heights fact;
    private final List<Difference> differences;

    /** One reading of all marks. */
    private record Row(Loading loading, int settled, double[] heights, double[] deviations) {}

    /** A reading at a mark less the weighted mean of earlier ones. */
    private record Difference(Datum datum, int mark, int row, double[] weights) {}

    private final List<Row> rows;

    private HeightEvidence(Heights fact, List<Row> rows, List<Difference> differences) {
        this.fact = fact;
        this.rows = rows;
        this.differences = differences;
    }

    static HeightEvidence of(Heights fact, Trial before) {
        List<Row> rows = new ArrayList<>();
        for (Heights.Step step : fact.steps()) {
            for (Heights.Reading reading : step.readings()) {
                rows.add(row(fact, step.load(), reading, before));
            }
        }
        List<Difference> differences = new ArrayList<>();
        for (int r = 1; r < rows.size(); r++) {
            for (int m = 0; m < fact.marks().size(); m++) {
                differences.add(difference(fact, rows, r, m));
            }
        }
        return new HeightEvidence(fact, List.copyOf(rows), List.copyOf(differences));
    }

    private static Row row(Heights fact, Loading loading, Heights.Reading reading, Trial before) {
        int marks = fact.marks().size();
        double[] heights = new double[marks];
        double[] deviations = new double[marks];
        for (int m = 0; m < marks; m++) {
            Measure height = reading.heights().get(m);
            double band = reading.settled() == Settled.NOT_KNOWN
                    ? Math.abs(height(before.standing(loading, 1), fact.marks().get(m))
                                    - height(
                                            before.standing(loading, -1),
                                            fact.marks().get(m)))
                            / 2
                    : 0;
            heights[m] = height.value();
            deviations[m] = Math.hypot(height.tolerance(), band / EVEN);
        }
        return new Row(loading, reading.settled().sign(), heights, deviations);
    }

    private static Difference difference(Heights fact, List<Row> rows, int r, int m) {
        double[] weights = new double[r];
        double sum = 0;
        for (int i = 0; i < r; i++) {
            weights[i] = 1 / (rows.get(i).deviations[m] * rows.get(i).deviations[m]);
            sum += weights[i];
        }
        double mean = 0;
        for (int i = 0; i < r; i++) {
            weights[i] /= sum;
            mean += weights[i] * rows.get(i).heights[m];
        }
        Row row = rows.get(r);
        String settled =
                switch (row.settled) {
                    case 1 -> " (settled from above)";
                    case -1 -> " (settled from below)";
                    default -> "";
                };
        String against = r == 1 ? rows.get(0).loading.label() : "the mean before";
        Datum datum = new Datum(
                "height, " + fact.marks().get(m).label() + ", " + row.loading.label() + settled + " against " + against,
                "mm",
                1000 * (row.heights[m] - mean),
                1000 * Math.sqrt(row.deviations[m] * row.deviations[m] + 1 / sum),
                fact.keepBack(),
                "");
        return new Difference(datum, m, r, weights);
    }

    /** Of a mark above where the body hangs weightless (m). */
    private static double height(VehicleModel model, Mark mark) {
        double[] row = model.motionAt(BodyMarks.place(model.vehicle(), mark)).rise();
        double sum = 0;
        for (int i = 0; i < row.length; i++) {
            sum += row[i] * model.rest().q()[i];
        }
        return sum;
    }

    @Override
    public Heights fact() {
        return fact;
    }

    @Override
    public List<Datum> data() {
        return differences.stream().map(Difference::datum).toList();
    }

    @Override
    public double[] predict(Trial trial, double[] circumstances) {
        int marks = fact.marks().size();
        double[][] heights = new double[rows.size()][marks];
        for (int r = 0; r < rows.size(); r++) {
            VehicleModel model = trial.standing(rows.get(r).loading, rows.get(r).settled);
            for (int m = 0; m < marks; m++) {
                heights[r][m] = height(model, fact.marks().get(m));
            }
        }
        return differences.stream()
                .mapToDouble(d -> {
                    double mean = 0;
                    for (int i = 0; i < d.weights.length; i++) {
                        mean += d.weights[i] * heights[i][d.mark];
                    }
                    return 1000 * (heights[d.row][d.mark] - mean);
                })
                .toArray();
    }
}
