package org.ridewright.signal;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.complex.Complex;

/** Test signals, and the complex gain read back from them. */
public final class Sines {
    private Sines() {}

    /** f(t) sampled from 0 s. */
    public static Channel sampled(double sampleRate, double duration, DoubleUnaryOperator f) {
        double[] u = new double[(int) Math.round(duration * sampleRate) + 1];
        for (int i = 0; i < u.length; i++) {
            u[i] = f.applyAsDouble(i / sampleRate);
        }
        return new Channel("test", "m/s²", sampleRate, 0, u);
    }

    /** amplitude·sin(2πft) from 0 s. */
    public static Channel sine(double sampleRate, double duration, double amplitude, double frequency) {
        return sampled(sampleRate, duration, t -> amplitude * Math.sin(2 * Math.PI * frequency * t));
    }

    /** Gain G that fits {@code |G| sin(2πft + arg G)} to samples [from, to) by least squares. */
    public static Complex gain(Channel y, double frequency, int from, int to) {
        double ss = 0;
        double sc = 0;
        double cc = 0;
        double sy = 0;
        double cy = 0;
        for (int i = from; i < to; i++) {
            double s = Math.sin(2 * Math.PI * frequency * y.time(i));
            double c = Math.cos(2 * Math.PI * frequency * y.time(i));
            ss += s * s;
            sc += s * c;
            cc += c * c;
            sy += s * y.sample(i);
            cy += c * y.sample(i);
        }
        double determinant = ss * cc - sc * sc;
        return new Complex((sy * cc - cy * sc) / determinant, (cy * ss - sy * sc) / determinant);
    }
}
