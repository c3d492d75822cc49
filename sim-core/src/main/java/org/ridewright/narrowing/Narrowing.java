package org.ridewright.narrowing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.ridewright.dynamics.RideException;
import org.ridewright.quantity.UnfitValueException;
import org.ridewright.vehicle.Vehicle;

/**
 * Values in the order in which measuring them would narrow an answer most.
 *
 * @param figures of the answer
 * @param central each figure with every value as it is
 * @param uncertainty standard uncertainty of each figure, from all values together
 * @param scatter by how much each figure changes when hardly anything does: where wheels bounce, a run that differs by next to nothing ends up
 *     elsewhere, and that is no value's doing
 * @param rows by {@link Row#share}, greatest first
 */
public record Narrowing(
        List<Answer.Figure> figures,
        List<Double> central,
        List<Double> uncertainty,
        List<Double> scatter,
        List<Row> rows) {
    /** Next to nothing, in standard uncertainties. */
    private static final double HARDLY = 1e-5;
    /** Values by which the scatter is found. */
    private static final int PROBES = 6;

    public Narrowing {
        figures = List.copyOf(figures);
        central = List.copyOf(central);
        uncertainty = List.copyOf(uncertainty);
        scatter = List.copyOf(scatter);
        rows = List.copyOf(rows);
    }

    /**
     * What one value does.
     *
     * @param contribution standard uncertainty that it brings into each figure, in the figure's unit
     * @param shares of each figure's variance, 0 to 1
     * @param share mean of {@link #shares}
     * @param refused why the vehicle could not be tried with the value up or down
     */
    public record Row(
            UncertainValue value,
            List<Double> contribution,
            List<Double> shares,
            double share,
            Optional<String> refused) {
        public Row {
            contribution = List.copyOf(contribution);
            shares = List.copyOf(shares);
        }
    }

    /** Departures of the figures with one value up and down; a side that cannot be is absent. */
    private record Tried(UncertainValue value, List<List<Double>> sides, Optional<String> refused) {
        /** {@code ½ (Δ₊² + Δ₋²)} of a figure, or of the one side that can be. */
        double meanSquare(int figure) {
            return sides.stream()
                    .mapToDouble(side -> side.get(figure))
                    .filter(Double::isFinite)
                    .map(d -> d * d)
                    .average()
                    .orElse(0);
        }
    }

    /**
     * Works the answer out with each value up and down.
     *
     * @throws RideException if the vehicle as it is cannot stand or ride
     */
    public static Narrowing of(Vehicle asWritten, List<UncertainValue> values, Answer answer) {
        List<Double> central = answer.of(asWritten);
        List<Double> scatter = scatter(values, answer, central);
        List<Tried> tried = values.parallelStream()
                .map(value -> tried(value, answer, central, 1))
                .toList();
        return ordered(answer.figures(), central, scatter, tried);
    }

    private static List<Double> scatter(List<UncertainValue> values, Answer answer, List<Double> central) {
        List<Tried> probes = IntStream.range(0, Math.min(PROBES, values.size()))
                .parallel()
                .mapToObj(i -> values.get(i * values.size() / Math.min(PROBES, values.size())))
                .map(value -> tried(value, answer, central, HARDLY))
                .toList();
        return IntStream.range(0, central.size())
                .mapToObj(f -> Math.sqrt(probes.stream()
                        .mapToDouble(p -> p.meanSquare(f))
                        .average()
                        .orElse(0)))
                .toList();
    }

    private static Tried tried(UncertainValue value, Answer answer, List<Double> central, double step) {
        List<List<Double>> sides = new ArrayList<>();
        List<String> refused = new ArrayList<>();
        for (double z : new double[] {step, -step}) {
            departure(() -> value.at().apply(z), answer, central, refused).ifPresent(sides::add);
        }
        return new Tried(value, sides, refused.stream().findFirst());
    }

    private static Optional<List<Double>> departure(
            Supplier<Vehicle> vehicle, Answer answer, List<Double> central, List<String> refused) {
        try {
            List<Double> figures = answer.of(vehicle.get());
            return Optional.of(IntStream.range(0, central.size())
                    .mapToObj(f -> figures.get(f) - central.get(f))
                    .toList());
        } catch (UnfitValueException | RideException unfit) {
            refused.add(unfit.getMessage());
            return Optional.empty();
        }
    }

    private static Narrowing ordered(
            List<Answer.Figure> figures, List<Double> central, List<Double> scatter, List<Tried> tried) {
        int count = figures.size();
        double[] variance = new double[count];
        List<double[]> squares = new ArrayList<>();
        for (Tried each : tried) {
            double[] own = new double[count];
            for (int f = 0; f < count; f++) {
                own[f] = Math.max(0, each.meanSquare(f) - scatter.get(f) * scatter.get(f));
                variance[f] += own[f];
            }
            squares.add(own);
        }
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < tried.size(); i++) {
            rows.add(row(tried.get(i), squares.get(i), variance));
        }
        rows.sort(Comparator.comparingDouble(Row::share).reversed());
        List<Double> uncertainty =
                IntStream.range(0, count).mapToObj(f -> Math.sqrt(variance[f])).toList();
        return new Narrowing(figures, central, uncertainty, scatter, rows);
    }

    private static Row row(Tried tried, double[] squares, double[] variance) {
        List<Double> contribution = new ArrayList<>();
        List<Double> shares = new ArrayList<>();
        double sum = 0;
        int counted = 0;
        for (int f = 0; f < squares.length; f++) {
            double share = variance[f] > 0 ? squares[f] / variance[f] : 0;
            contribution.add(Math.sqrt(squares[f]));
            shares.add(share);
            sum += share;
            counted += variance[f] > 0 ? 1 : 0;
        }
        return new Row(tried.value(), contribution, shares, counted > 0 ? sum / counted : 0, tried.refused());
    }
}
