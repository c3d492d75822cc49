package org.ridewright.comfort;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.signal.AnalogueFilter;
import org.ridewright.signal.Butterworth;
import org.ridewright.signal.FilterSection;

/** {@link MotionBands} of samples that come one by one. */
final class BandMeter {
    private static final AnalogueFilter HEAVE =
            new AnalogueFilter(1, Butterworth.lowPass(MotionBands.ORDER, MotionBands.HEAVE_TO_JOLT));
    private static final AnalogueFilter JOLT = inSeries(
            Butterworth.highPass(MotionBands.ORDER, MotionBands.HEAVE_TO_JOLT),
            Butterworth.lowPass(MotionBands.ORDER, MotionBands.JOLT_TO_BUZZ));
    private static final AnalogueFilter BUZZ = inSeries(
            Butterworth.highPass(MotionBands.ORDER, MotionBands.HEAVE_TO_JOLT),
            Butterworth.highPass(MotionBands.ORDER, MotionBands.JOLT_TO_BUZZ));

    private final FilteredLevel heave;
    private final FilteredLevel jolt;
    private final FilteredLevel buzz;

    BandMeter(Sampling sampling, Window window, StartUp startUp) {
        heave = new FilteredLevel(HEAVE, sampling, window, startUp);
        jolt = new FilteredLevel(JOLT, sampling, window, startUp);
        buzz = new FilteredLevel(BUZZ, sampling, window, startUp);
    }

    void accept(double sample) {
        heave.accept(sample);
        jolt.accept(sample);
        buzz.accept(sample);
    }

    MotionBands bands(Level whole) {
        return new MotionBands(heave.level(), jolt.level(), buzz.level(), whole);
    }

    private static AnalogueFilter inSeries(List<FilterSection> one, List<FilterSection> other) {
        List<FilterSection> sections = new ArrayList<>(one);
        sections.addAll(other);
        return new AnalogueFilter(1, sections);
    }
}
