package org.ridewright.roughness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Goes along a track once, window by window, and takes everything down. Memory does not grow with the track but for the index of each
 * hundred metres.
 */
public final class TrackSurvey {
    /** Heights further apart (m) say nothing of what a wheel does between them. */
    public static final double WIDEST_FOR_WHEELS = 0.05;

    private static final int WINDOW = 8192;

    /** The stretch shown with its wheel paths (m), and the pieces in which it is looked for. */
    private static final double EXCERPT = 2;

    private static final double PIECE = 0.5;

    private final HeightSource source;
    private final List<SampledWheel> wheels;
    private final int margin;
    private final Outline.Builder outline;
    private final RoughnessIndex index;
    private final Optional<HeightSpectrumAccumulator> road;
    private final List<HeightSpectrumAccumulator> paths = new ArrayList<>();
    private final int piece;
    private long worstPiece;
    private double worst = -1;

    private TrackSurvey(HeightSource source, List<SampledWheel> wheels) {
        this.source = source;
        this.wheels = source.spacing() <= WIDEST_FOR_WHEELS * (1 + 1e-9) ? List.copyOf(wheels) : List.of();
        margin = this.wheels.stream()
                .mapToInt(w -> w.margin(source.spacing()))
                .max()
                .orElse(0);
        outline = new Outline.Builder(source);
        index = RoughnessIndex.standard(source.spacing());
        boolean enough = source.size() >= HeightSpectrumAccumulator.FEWEST;
        road = enough ? Optional.of(new HeightSpectrumAccumulator(source.spacing(), source.size())) : Optional.empty();
        for (int i = 0; i < this.wheels.size() && enough; i++) {
            paths.add(new HeightSpectrumAccumulator(source.spacing(), source.size()));
        }
        piece = (int) Math.max(1, Math.round(PIECE / source.spacing()));
    }

    /**
     * Surveys a track.
     *
     * @param wheels whose paths are wanted; left out where the heights are further apart than {@link #WIDEST_FOR_WHEELS}
     * @throws IllegalArgumentException if a height is not finite
     */
    public static TrackRoughness of(HeightSource source, List<SampledWheel> wheels) {
        TrackSurvey survey = new TrackSurvey(source, wheels);
        survey.walk();
        return survey.result();
    }

    private void walk() {
        // whole pieces in each window
        int window = Math.max(1, WINDOW / piece) * piece;
        for (long first = 0; first < source.size(); first += window) {
            int n = (int) Math.min(window, source.size() - first);
            double[] heights = new double[n + 2 * margin];
            source.read(first - margin, heights);
            for (int i = margin; i < margin + n; i++) {
                if (!Double.isFinite(heights[i])) {
                    throw new IllegalArgumentException("heights must be finite, got " + heights[i] + " m at station "
                            + (source.start() + (first + i - margin) * source.spacing()) + " m");
                }
                outline.accept(heights[i]);
            }
            index.accept(heights, margin, margin + n);
            road.ifPresent(r -> r.accept(heights, margin, margin + n));
            double[] differ = new double[(n + piece - 1) / piece];
            for (int w = 0; w < wheels.size(); w++) {
                double[] path = wheels.get(w).path(heights, margin, source.spacing());
                if (!paths.isEmpty()) {
                    paths.get(w).accept(path, 0, n);
                }
                for (int i = 0; i < n; i++) {
                    double off = path[i] - heights[margin + i];
                    differ[i / piece] += off * off;
                }
            }
            for (int i = 0; i < differ.length; i++) {
                if (differ[i] > worst) {
                    worst = differ[i];
                    worstPiece = first / piece + i;
                }
            }
        }
    }

    private TrackRoughness result() {
        Optional<HeightSpectrum> spectrum = road.flatMap(HeightSpectrumAccumulator::result);
        List<TrackRoughness.WheelSpectrum> found = new ArrayList<>();
        for (int w = 0; w < paths.size(); w++) {
            SampledWheel wheel = wheels.get(w);
            paths.get(w).result().ifPresent(s -> found.add(new TrackRoughness.WheelSpectrum(wheel, s)));
        }
        return new TrackRoughness(
                source.start(),
                (source.size() - 1) * source.spacing(),
                source.spacing(),
                outline.build(),
                spectrum,
                spectrum.flatMap(StraightFit::of),
                index,
                found,
                wheels.isEmpty() ? Optional.empty() : Optional.of(excerpt()));
    }

    /** The stretch around the piece on which wheels and road differ most. */
    private Excerpt excerpt() {
        int n = (int) Math.min(source.size(), 1 + Math.round(EXCERPT / source.spacing()));
        long middle = worstPiece * piece + piece / 2;
        long first = Math.max(0, Math.min(source.size() - n, middle - n / 2));
        double[] heights = new double[n + 2 * margin];
        source.read(first - margin, heights);
        double[] shown = new double[n];
        System.arraycopy(heights, margin, shown, 0, n);
        List<double[]> rolled = wheels.stream()
                .map(w -> w.path(heights, margin, source.spacing()))
                .toList();
        return new Excerpt(source.start() + first * source.spacing(), source.spacing(), shown, rolled);
    }
}
