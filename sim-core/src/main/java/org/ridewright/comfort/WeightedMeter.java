package org.ridewright.comfort;

/** The measures of one axis from samples that are weighted already and come one by one. */
final class WeightedMeter {
    private final Window window;
    private final PowerIntegral squares;
    private final PowerIntegral fourths;
    private final WindowIntegral square;
    private final WindowIntegral fourth;
    private final RunningMaximum running;
    private final PeakHold peak;

    /** @throws IllegalArgumentException if the window is shorter than 1 s or begins before the samples */
    WeightedMeter(Sampling sampling, Window window) {
        this.window = window;
        squares = new PowerIntegral(sampling, 2, RunningMaximum.history(sampling.rate(), RunningRms.INTEGRATION_TIME));
        fourths = new PowerIntegral(sampling, 4, 3);
        square = new WindowIntegral(squares, window);
        fourth = new WindowIntegral(fourths, window);
        running = new RunningMaximum(squares, window, RunningRms.INTEGRATION_TIME);
        peak = new PeakHold(sampling, window);
    }

    void accept(double weighted) {
        squares.accept(weighted);
        fourths.accept(weighted);
        square.update();
        fourth.update();
        running.update();
        peak.accept(weighted);
    }

    VibrationMetrics metrics(double unweightedPeak) {
        return new VibrationMetrics(
                window,
                Math.sqrt(square.value() / window.length()),
                running.largest(),
                Math.sqrt(Math.sqrt(fourth.value())),
                peak.largest(),
                unweightedPeak);
    }
}
