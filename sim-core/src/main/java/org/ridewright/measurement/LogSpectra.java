package org.ridewright.measurement;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ridewright.comfort.TrustedBand;
import org.ridewright.signal.Channel;
import org.ridewright.signal.Detrend;
import org.ridewright.signal.PowerSpectrum;
import org.ridewright.signal.ThirdOctave;
import org.ridewright.signal.ThirdOctaveSpectrum;
import org.ridewright.signal.WelchAccumulator;
import org.ridewright.signal.WelchSpectra;

/**
 * Spectra of a recorded ride over its windows; no segment reaches across a dropout.
 *
 * @param power by axis: z, and the two horizontal ones, if logged
 * @param vertical one-third octaves of z, from the first that the lines resolve up to the last inside the trusted band, 80 Hz at most; empty
 *     where there is none
 */
public record LogSpectra(Map<LogAxis, PowerSpectrum> power, Optional<ThirdOctaveSpectrum> vertical) {
    private static final double FINEST = 0.05;
    private static final double COARSEST = 2;
    private static final int WANTED_SEGMENTS = 8;

    /** A band averages over its lines as well. */
    private static final int WANTED_SEGMENTS_FOR_BANDS = 4;

    private static final double LOWEST_BAND = 0.5;
    private static final double HIGHEST_BAND = 80;

    public LogSpectra {
        power = Map.copyOf(power);
    }

    /** Empty where no piece holds a segment of {@value #COARSEST} Hz resolution. */
    public static Optional<LogSpectra> of(RecordedRide ride) {
        List<LogAxis> axes = List.copyOf(ride.recording().columns().keySet());
        Optional<WelchSpectra> lines = averaged(ride, axes, WANTED_SEGMENTS);
        Optional<WelchSpectra> bands = averaged(ride, axes, WANTED_SEGMENTS_FOR_BANDS);
        if (lines.isEmpty() || bands.isEmpty()) {
            return Optional.empty();
        }
        Map<LogAxis, PowerSpectrum> power = new EnumMap<>(LogAxis.class);
        for (int i = 0; i < axes.size(); i++) {
            power.put(axes.get(i), lines.get().power(i));
        }
        PowerSpectrum vertical = bands.get().power(axes.indexOf(LogAxis.Z));
        return Optional.of(new LogSpectra(power, octaves(vertical, new TrustedBand(ride.rate()).upper())));
    }

    /** The finest spectra of so many segments, or of as many as there are. */
    private static Optional<WelchSpectra> averaged(RecordedRide ride, List<LogAxis> axes, int segments) {
        Optional<WelchSpectra> best = Optional.empty();
        for (int segment = WelchAccumulator.segmentFor(ride.rate(), FINEST);
                segment >= 4 && ride.rate() / segment <= COARSEST;
                segment /= 2) {
            Optional<WelchSpectra> here = welch(ride, axes, segment);
            best = here.isPresent() ? here : best;
            if (here.isPresent() && here.get().averages() >= segments) {
                break;
            }
        }
        return best;
    }

    private static Optional<ThirdOctaveSpectrum> octaves(PowerSpectrum power, double trusted) {
        return ThirdOctave.between(LOWEST_BAND, HIGHEST_BAND).stream()
                .filter(band -> band.upper() <= trusted * 1.001)
                .max(Comparator.comparingInt(ThirdOctave::number))
                .flatMap(highest -> ThirdOctaveSpectrum.resolved(power, LOWEST_BAND, highest.exact()));
    }

    private static Optional<WelchSpectra> welch(RecordedRide ride, List<LogAxis> axes, int segment) {
        WelchAccumulator welch = new WelchAccumulator(ride.rate(), segment, axes.size(), Detrend.MEAN);
        double[] sample = new double[axes.size()];
        for (Piece piece : ride.pieces()) {
            welch.interrupt();
            Channel any = piece.vertical();
            for (int i = 0; i < any.size(); i++) {
                if (any.time(i) < piece.window().from()
                        || any.time(i) > piece.window().to()) {
                    continue;
                }
                for (int c = 0; c < sample.length; c++) {
                    sample[c] = piece.channels().get(axes.get(c)).sample(i);
                }
                welch.accept(sample);
            }
        }
        return welch.averages() > 0 ? Optional.of(welch.result()) : Optional.empty();
    }
}
