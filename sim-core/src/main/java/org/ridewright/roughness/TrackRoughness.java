package org.ridewright.roughness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What was found of one track.
 *
 * @param start station of the first height (m)
 * @param length of road looked at (m)
 * @param spacing of the heights (m)
 * @param outline the whole profile, drawn small
 * @param spectrum of the heights; absent where the road is too short
 * @param fit straight line through the spectrum; absent where the spectrum does not reach far enough, or the road is level
 * @param index of roughness, with its sections
 * @param wheels what each wheel makes of the road; none where the heights are too far apart to tell
 * @param excerpt the stretch on which wheels and road differ most; absent where there are no wheels
 */
public record TrackRoughness(
        double start,
        double length,
        double spacing,
        Outline outline,
        Optional<HeightSpectrum> spectrum,
        Optional<StraightFit> fit,
        RoughnessIndex index,
        List<WheelSpectrum> wheels,
        Optional<Excerpt> excerpt) {
    /** Bumps from 5 m to 5 cm long: longer ones every wheel follows, shorter ones few surveys show. */
    public static final double LONGEST_BUMP = 5;

    public static final double SHORTEST_BUMP = 0.05;

    /** A band whose heights have a smaller root mean square (m) holds nothing that a wheel could pass on. */
    private static final double NOTHING = 1e-5;

    public TrackRoughness {
        wheels = List.copyOf(wheels);
    }

    /**
     * A wheel and the spectrum of its path.
     *
     * @param spectrum of the heights of its centre
     */
    public record WheelSpectrum(SampledWheel wheel, HeightSpectrum spectrum) {}

    /**
     * How much of the road's height a wheel's centre follows in a band: root of the path's spectrum over the road's.
     *
     * @param share 1 where the wheel follows; may exceed 1 where a rigid wheel makes kinks of its own
     */
    public record Passed(Band band, double share) {}

    /** Of one wheel, in thirds of an octave, from the longest bumps to the shortest that the heights show. */
    public List<Passed> passed(WheelSpectrum wheel) {
        List<Passed> passed = new ArrayList<>();
        HeightSpectrum road = spectrum.orElseThrow();
        for (Band band : Band.thirds(1 / LONGEST_BUMP, Math.min(1 / SHORTEST_BUMP, road.highest()))) {
            double height = road.height(band.from(), band.to());
            boolean something = height * (band.to() - band.from()) > NOTHING * NOTHING;
            if (road.holds(band.from(), band.to()) && something) {
                double path = wheel.spectrum().height(band.from(), band.to());
                passed.add(new Passed(band, Math.sqrt(path / height)));
            }
        }
        return passed;
    }

    /**
     * Root mean square slope of a wheel's path over that of the road, bumps from 5 m to 5 cm or the shortest that the heights show: the
     * axle's up and down speed, as a share of that of a wheel without size.
     */
    public double jolting(WheelSpectrum wheel) {
        HeightSpectrum road = spectrum.orElseThrow();
        double from = Math.max(1 / LONGEST_BUMP, road.lowest());
        double to = Math.min(1 / SHORTEST_BUMP, road.highest());
        return wheel.spectrum().rmsSlope(from, to) / road.rmsSlope(from, to);
    }
}
