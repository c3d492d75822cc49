package org.ridewright.signal;

/** Power and cross spectra of channels that were sampled together; what a {@link WelchAccumulator} gives. Immutable. */
public final class WelchSpectra {
    private final PowerSpectrum[] power;
    private final double[][][] cross;

    /** @param cross real and imaginary part of G_ij on each line, of pair {@link #pair}; not copied */
    WelchSpectra(PowerSpectrum[] power, double[][][] cross) {
        this.power = power;
        this.cross = cross;
    }

    /** Number of channels. */
    public int channels() {
        return power.length;
    }

    /** Number K of segments averaged. */
    public int averages() {
        return power[0].averages();
    }

    /** Power spectral density of a channel. */
    public PowerSpectrum power(int channel) {
        return power[channel];
    }

    /** From one channel to another. */
    public TransferFunction transfer(int from, int to) {
        if (from == to) {
            return new TransferFunction(
                    power[from], power[to], power[from].densities(), new double[power[from].size()]);
        }
        double[][] pair = cross[pair(Math.min(from, to), Math.max(from, to), power.length)];
        double[] imaginary = pair[1].clone();
        if (from > to) {
            for (int k = 0; k < imaginary.length; k++) {
                imaginary[k] = -imaginary[k];
            }
        }
        return new TransferFunction(power[from], power[to], pair[0].clone(), imaginary);
    }

    /** Place of the pair i &lt; j among all pairs of n channels, (0,1), (0,2), … (1,2), … */
    static int pair(int i, int j, int n) {
        return i * n - i * (i + 1) / 2 + j - i - 1;
    }
}
