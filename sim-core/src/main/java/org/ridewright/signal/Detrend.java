package org.ridewright.signal;

/** What is taken off a stretch of samples before it is looked at. */
public enum Detrend {
    /** Nothing. */
    NONE,
    /** The mean: gravity in an accelerometer's record, the height of a survey's datum. */
    MEAN,
    /** The straight line of least squares: a mean and a drift. */
    LINE;

    /** Takes it off in place. */
    public void remove(double[] samples) {
        if (this == NONE || samples.length == 0) {
            return;
        }
        double sum = 0;
        for (double sample : samples) {
            sum += sample;
        }
        double mean = sum / samples.length;
        double middle = (samples.length - 1) / 2.0;
        double slope = this == LINE ? slope(samples, middle) : 0;
        for (int i = 0; i < samples.length; i++) {
            samples[i] -= mean + slope * (i - middle);
        }
    }

    /** The channel without it; same instants, name and unit. */
    public Channel apply(Channel channel) {
        double[] samples = channel.samples();
        remove(samples);
        return channel.with(channel.name(), channel.unit(), samples);
    }

    /** Σ (i − m) u_i / Σ (i − m)²; the mean of u drops out. */
    private static double slope(double[] samples, double middle) {
        double product = 0;
        double square = 0;
        for (int i = 0; i < samples.length; i++) {
            product += (i - middle) * samples[i];
            square += (i - middle) * (i - middle);
        }
        return square > 0 ? product / square : 0;
    }
}
