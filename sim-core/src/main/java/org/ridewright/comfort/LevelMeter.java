package org.ridewright.comfort;

/** R.m.s. and peak over a window of samples that come one by one. */
final class LevelMeter {
    private final Window window;
    private final PowerIntegral squares;
    private final WindowIntegral sum;
    private final PeakHold peak;

    LevelMeter(Sampling sampling, Window window) {
        this.window = window;
        squares = new PowerIntegral(sampling, 2, 3);
        sum = new WindowIntegral(squares, window);
        peak = new PeakHold(sampling, window);
    }

    void accept(double sample) {
        squares.accept(sample);
        sum.update();
        peak.accept(sample);
    }

    Level level() {
        return new Level(Math.sqrt(sum.value() / window.length()), peak.largest());
    }
}
