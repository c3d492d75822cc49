package org.ridewright.roughness;

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
    public TrackRoughness {
        wheels = List.copyOf(wheels);
    }

    /** The spectrum in the smoothing bands, as far as it can be trusted; empty where there is none. */
    public List<SpectrumPoint> smoothed() {
        return spectrum.map(HeightSpectrum::smoothed).orElse(List.of());
    }

    /**
     * A wheel and the spectrum of its path.
     *
     * @param spectrum of the heights of its centre
     */
    public record WheelSpectrum(SampledWheel wheel, HeightSpectrum spectrum) {}
}
