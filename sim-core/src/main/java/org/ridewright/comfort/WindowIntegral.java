package org.ridewright.comfort;

/** The integral over one window known beforehand, picked up as its two ends pass. */
final class WindowIntegral {
    private final PowerIntegral integral;
    private final Window window;
    private final double from;
    private final double to;
    private PowerIntegral.Mark beginning;
    private double value = Double.NaN;

    WindowIntegral(PowerIntegral integral, Window window) {
        this.integral = integral;
        this.window = window;
        integral.sampling().requireBefore(window);
        from = integral.sampling().place(window.from());
        to = integral.sampling().place(window.to());
    }

    /** To be called after each sample that the integral takes. */
    void update() {
        long last = integral.count() - 1;
        if (beginning == null && last >= from) {
            beginning = integral.mark(from);
        }
        if (Double.isNaN(value) && last >= to) {
            value = integral.between(beginning, integral.mark(to));
        }
    }

    /**
     * The integral over the window.
     *
     * @throws IllegalStateException if the samples do not reach its end
     */
    double value() {
        if (Double.isNaN(value)) {
            throw new IllegalStateException("window ends at " + window.to() + " s, but the samples end at "
                    + integral.sampling().time(Math.max(0, integral.count() - 1)) + " s");
        }
        return value;
    }
}
