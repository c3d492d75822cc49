package org.ridewright.comfort;

/**
 * {@link MotionSickness} from samples of a vertical acceleration that come one by one. The weighting Wf takes 13 s to forget an unknown
 * start, and reaches down to 0.1 Hz: a window should be minutes long.
 */
public final class MotionSicknessMeter {
    private final Window window;
    private final FilteredLevel weighted;

    /** Arguments as in {@link AxisMeter}. */
    public MotionSicknessMeter(Window window, double sampleRate, double start, StartUp startUp) {
        this.window = window;
        weighted = new FilteredLevel(Weighting.WF.filter(), new Sampling(start, sampleRate), window, startUp);
    }

    /** Takes the next sample (m/s²). */
    public void accept(double sample) {
        weighted.accept(sample);
    }

    /**
     * For an exposure to the measured ride, or to more of the same.
     *
     * @param exposure t (s), &gt; 0
     */
    public MotionSickness result(double exposure) {
        if (!(exposure > 0) || Double.isInfinite(exposure)) {
            throw new IllegalArgumentException("exposure must be > 0 s and finite, got " + exposure + " s");
        }
        return new MotionSickness(weighted.level().rms(), window.length(), exposure);
    }
}
