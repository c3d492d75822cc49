package org.ridewright.road;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.transform.DftNormalization;
import org.hipparchus.transform.FastFourierTransformer;
import org.hipparchus.transform.TransformType;

/**
 * One layer of a random surface: heights and slopes of several tracks at the points of an even grid.
 *
 * <p>Independent white noise e_j, one source a track, is shaped by kernels of finite length,
 *
 * <pre>
 *   z_i(m) = Σ_j Σ_|l|≤M  h_ij(l) e_j(m − l)        H_ij(n) = √(G(n)/(2d)) L_ij(n)        L Lᵀ = [g(n, |y_i − y_j|)]
 * </pre>
 *
 * with the spacing d, the wanted spectrum G and the Cholesky factor L of the tracks' coherence at each wavenumber. Every point is the
 * same sum of noise around it wherever it stands: the surface is Gaussian and stationary, repeats nowhere, and has no seams. Blocks of
 * it are made by Fourier transform, of N points each, of which the N − 2M are used that the transform's wrapping round does not reach.
 * Slopes come from the derivative of the same kernels, made as the imaginary part of the same transform.
 *
 * <p>The kernels are tapered by a half cosine over their outer half, which blurs H over some 1/(Md).
 */
final class NoiseLayer {
    /** Half length of a kernel, over the inverse of the narrowest feature of the layer's spectrum. */
    private static final double REACH = 3;

    private final double spacing;
    private final int reach;
    private final int size;
    private final Noise[] sources;
    /** Real factor of source j in track i over all N lines: what gives height + i·slope. */
    private final double[][][] factors;

    private final double[][][] spectra;
    private final double[][] work;
    private final Map<Long, double[][][]> blocks;
    private double[][][] current;
    private long currentNumber;

    /**
     * @param seed of the surface
     * @param number of the layer within it
     * @param d spacing of the grid (m)
     * @param kept number of blocks kept for reading again
     */
    NoiseLayer(
            RoughnessSpectrum spectrum,
            Coherence coherence,
            SpectrumBand band,
            LaneOrder lanes,
            long seed,
            int number,
            double d,
            int kept) {
        spacing = d;
        reach = (int) Math.ceil(REACH / (band.narrowest() * d));
        size = Integer.highestOneBit(Math.max(4 * reach, 2048) - 1) << 1;
        int tracks = lanes.positions().size();
        sources = new Noise[tracks];
        for (int j = 0; j < tracks; j++) {
            sources[j] = new Noise(seed, 1000L * (number + 1) + lanes.sources().get(j));
        }
        factors = new double[tracks][tracks][];
        spectra = new double[tracks + 1][2][size];
        work = new double[2][size];
        shape(spectrum, coherence, band, lanes.positions());
        blocks = new LinkedHashMap<>(2 * kept, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<Long, double[][][]> eldest) {
                return size() > kept;
            }
        };
    }

    /** Height of a track at grid point m (m). */
    double height(int track, long m) {
        return at(track, 0, m);
    }

    /** Slope of a track at grid point m. */
    double slope(int track, long m) {
        return at(track, 1, m);
    }

    double spacing() {
        return spacing;
    }

    /** Spectrum that the layer has in truth, between two of its tracks, at wavenumber n (m³). */
    double realised(int a, int b, double n) {
        double sum = 0;
        for (int j = 0; j <= Math.min(a, b); j++) {
            sum += response(factors[a][j], n) * response(factors[b][j], n);
        }
        return 2 * spacing * sum;
    }

    private int useful() {
        return size - 2 * reach;
    }

    private double at(int track, int what, long m) {
        long number = Math.floorDiv(m, useful());
        if (current == null || number != currentNumber) {
            current = blocks.computeIfAbsent(number, this::block);
            currentNumber = number;
        }
        return current[track][what][(int) (m - number * useful())];
    }

    private double[][][] block(long number) {
        long first = number * useful() - reach;
        int tracks = sources.length;
        for (int j = 0; j < tracks; j += 2) {
            sources[j].normals(first, spectra[j][0]);
            if (j + 1 < tracks) {
                sources[j + 1].normals(first, spectra[j][1]);
            } else {
                Arrays.fill(spectra[j][1], 0);
            }
            transform(spectra[j], TransformType.FORWARD);
            separate(spectra[j], spectra[j + 1]);
        }
        double[][][] block = new double[tracks][2][useful()];
        for (int i = 0; i < tracks; i++) {
            Arrays.fill(work[0], 0);
            Arrays.fill(work[1], 0);
            for (int j = 0; j <= i; j++) {
                double[] f = factors[i][j];
                double[] re = spectra[j][0];
                double[] im = spectra[j][1];
                for (int k = 0; k < size; k++) {
                    work[0][k] += f[k] * re[k];
                    work[1][k] += f[k] * im[k];
                }
            }
            transform(work, TransformType.INVERSE);
            System.arraycopy(work[0], reach, block[i][0], 0, useful());
            System.arraycopy(work[1], reach, block[i][1], 0, useful());
        }
        return block;
    }

    /** Transforms of two real signals from that of the first + i times the second: A = (P + P̄₋)/2, B = (P − P̄₋)/2i. */
    private void separate(double[][] p, double[][] b) {
        for (int k = 0; k <= size / 2; k++) {
            int m = (size - k) % size;
            double pr = p[0][k];
            double pi = p[1][k];
            double mr = p[0][m];
            double mi = p[1][m];
            p[0][k] = (pr + mr) / 2;
            p[1][k] = (pi - mi) / 2;
            p[0][m] = p[0][k];
            p[1][m] = -p[1][k];
            b[0][k] = (pi + mi) / 2;
            b[1][k] = (mr - pr) / 2;
            b[0][m] = b[0][k];
            b[1][m] = -b[1][k];
        }
    }

    private void shape(RoughnessSpectrum spectrum, Coherence coherence, SpectrumBand band, List<Double> positions) {
        int half = size / 2;
        int tracks = positions.size();
        double[][][] lines = new double[tracks][tracks][half + 1];
        double[][] factor = new double[tracks][tracks];
        for (int k = 1; k <= half; k++) {
            double n = k / (size * spacing);
            double share = band.share(n);
            if (share > 0) {
                double amplitude = Math.sqrt(spectrum.density(n) * share / (2 * spacing));
                decompose(coherence, n, spectrum.waviness(n), positions, factor);
                for (int i = 0; i < tracks; i++) {
                    for (int j = 0; j <= i; j++) {
                        lines[i][j][k] = amplitude * factor[i][j];
                    }
                }
            }
        }
        for (int i = 0; i < tracks; i++) {
            for (int j = 0; j <= i; j++) {
                factors[i][j] = factor(lines[i][j]);
            }
        }
    }

    /** Cholesky factor of the tracks' coherence; of tracks that are one, the later adds nothing of its own. */
    private static void decompose(
            Coherence coherence, double n, double waviness, List<Double> positions, double[][] factor) {
        for (int j = 0; j < positions.size(); j++) {
            double own = 1;
            for (int k = 0; k < j; k++) {
                own -= factor[j][k] * factor[j][k];
            }
            factor[j][j] = own > 1e-12 ? Math.sqrt(own) : 0;
            for (int i = j + 1; i < positions.size(); i++) {
                double rest = coherence.ratio(n, waviness, Math.abs(positions.get(i) - positions.get(j)));
                for (int k = 0; k < j; k++) {
                    rest -= factor[i][k] * factor[j][k];
                }
                factor[i][j] = factor[j][j] > 0 ? rest / factor[j][j] : 0;
            }
        }
    }

    /** From H on the lines 0 to N/2 to the tapered kernel's, with its derivative's: even part − odd part. */
    private double[] factor(double[] lines) {
        int half = size / 2;
        double[][] kernel = new double[2][size];
        for (int k = 0; k < size; k++) {
            kernel[0][k] = lines[Math.min(k, size - k)];
        }
        transform(kernel, TransformType.INVERSE);
        for (int m = 0; m < size; m++) {
            kernel[0][m] *= taper(Math.min(m, size - m));
            kernel[1][m] = 0;
        }
        transform(kernel, TransformType.FORWARD);
        double[] out = kernel[0].clone();
        for (int k = 0; k < size; k++) {
            int line = k <= half ? k : k - size;
            kernel[1][k] = k == half ? 0 : 2 * Math.PI * line / (size * spacing) * out[k];
            kernel[0][k] = 0;
        }
        transform(kernel, TransformType.INVERSE);
        for (int m = 0; m < size; m++) {
            kernel[0][m] *= Math.min(m, size - m) <= reach ? 1 : 0;
            kernel[1][m] = 0;
        }
        transform(kernel, TransformType.FORWARD);
        for (int k = 0; k < size; k++) {
            out[k] -= kernel[1][k];
        }
        return out;
    }

    private double taper(int m) {
        double s = 2.0 * m / reach - 1;
        return s <= 0 ? 1 : s >= 1 ? 0 : (1 + StrictMath.cos(Math.PI * s)) / 2;
    }

    /** Frequency response of a kernel between the lines, from its even part. */
    private double response(double[] f, double n) {
        double at = n * size * spacing;
        int k = (int) Math.floor(at);
        if (k + 1 > size / 2) {
            return 0;
        }
        double low = (f[k] + f[(size - k) % size]) / 2;
        double high = (f[k + 1] + f[size - k - 1]) / 2;
        return low + (at - k) * (high - low);
    }

    private static void transform(double[][] data, TransformType type) {
        FastFourierTransformer.transformInPlace(data, DftNormalization.STANDARD, type);
    }
}
