package org.ridewright.roughness;

import java.util.ArrayList;
import java.util.List;

/**
 * What was found of a road.
 *
 * @param name of the road
 * @param source where its heights come from, in a few words
 * @param notes on how the heights were come by: whole sentences, none as a rule
 * @param tracks from left to right, at least one, surveyed with the same wheels and the same spacing
 */
public record SurveyedRoad(String name, String source, List<String> notes, List<SurveyedTrack> tracks) {
    /** Longest waves looked at for wheels (m): longer ones every wheel follows. */
    public static final double LONGEST_WAVE = 5;

    /** Shortest waves looked at for wheels (m): shorter ones few surveys show. */
    public static final double SHORTEST_WAVE = 0.05;

    /** A band whose heights have a smaller root mean square (m) holds nothing that a wheel could pass on. */
    private static final double NOTHING = 1e-5;

    public SurveyedRoad {
        notes = List.copyOf(notes);
        tracks = List.copyOf(tracks);
    }

    /** A track and what it is called. */
    public record SurveyedTrack(String name, TrackRoughness roughness) {}

    /**
     * How much of the road's height a wheel's centre follows in a band: root of the path's spectrum over the road's.
     *
     * @param share 1 where the wheel follows; may exceed 1 where a rigid wheel makes kinks of its own
     */
    public record Passed(Band band, double share) {}

    /** The wheels whose paths were looked at; none where heights are too far apart or too few. */
    public List<SampledWheel> wheels() {
        return tracks.get(0).roughness().wheels().stream()
                .map(TrackRoughness.WheelSpectrum::wheel)
                .toList();
    }

    /** Over all tracks, in octaves a third of an octave apart, from the longest waves to the shortest that the road has and its heights show. */
    public List<Passed> passed(int wheel) {
        List<Passed> passed = new ArrayList<>();
        HeightSpectrum first = road(tracks.get(0));
        double end = tracks.stream().mapToDouble(t -> road(t).end()).max().orElseThrow();
        for (Band band : Band.overlapping(longest(first), Math.min(end, shortest(first)))) {
            double path = 0;
            double road = 0;
            for (SurveyedTrack track : tracks) {
                path += wheel(track, wheel).height(band.from(), band.to());
                road += road(track).height(band.from(), band.to());
            }
            if (road / tracks.size() * (band.to() - band.from()) > NOTHING * NOTHING) {
                passed.add(new Passed(band, Math.sqrt(path / road)));
            }
        }
        return passed;
    }

    /**
     * Root mean square slope of a wheel's path over that of the road, over all tracks and the same waves: the axle's up and down speed as a
     * share of that of a wheel without size.
     */
    public double jolting(int wheel) {
        HeightSpectrum first = road(tracks.get(0));
        double path = 0;
        double road = 0;
        for (SurveyedTrack track : tracks) {
            path += Math.pow(wheel(track, wheel).rmsSlope(longest(first), shortest(first)), 2);
            road += Math.pow(road(track).rmsSlope(longest(first), shortest(first)), 2);
        }
        return Math.sqrt(path / road);
    }

    /** Length of the longest waves taken together in {@link #jolting} (m). */
    public double longestWave() {
        return 1 / longest(road(tracks.get(0)));
    }

    /** Length of the shortest waves taken together in {@link #jolting} (m). */
    public double shortestWave() {
        return 1 / shortest(road(tracks.get(0)));
    }

    /** Wavenumber of the longest waves looked at for wheels (cycle/m). */
    private static double longest(HeightSpectrum road) {
        return Math.max(1 / LONGEST_WAVE, road.lowest());
    }

    private static double shortest(HeightSpectrum road) {
        return Math.min(1 / SHORTEST_WAVE, road.highest());
    }

    private static HeightSpectrum road(SurveyedTrack track) {
        return track.roughness().spectrum().orElseThrow();
    }

    private static HeightSpectrum wheel(SurveyedTrack track, int wheel) {
        return track.roughness().wheels().get(wheel).spectrum();
    }
}
