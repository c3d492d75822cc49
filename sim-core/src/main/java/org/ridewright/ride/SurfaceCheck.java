package org.ridewright.ride;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.ride.Scenario.Entrant;
import org.ridewright.road.Coherence;
import org.ridewright.road.Road;
import org.ridewright.road.RoughnessSpectrum;
import org.ridewright.road.Surface;
import org.ridewright.road.Surface.Joints;
import org.ridewright.road.Surface.Measured;
import org.ridewright.road.Surface.Ruts;
import org.ridewright.road.Surface.Setts;
import org.ridewright.road.Surface.Spectral;
import org.ridewright.road.Surface.Stones;
import org.ridewright.road.Surface.Twist;
import org.ridewright.road.Surface.Washboard;
import org.ridewright.vehicle.Axle;
import org.ridewright.vehicle.check.Faults;

/** Judges one surface of a road by itself, beside the others and against the wheels that roll over it. */
record SurfaceCheck(List<Entrant> entrants, Road road, int number, String item, Faults faults) {
    private static final double SHORTEST_STRETCH = 0.1;
    private static final double MOST_STONES = 100;
    private static final double FINEST = 1000;
    private static final double LONGEST_WAVE = 1e-4;
    private static final double GREATEST_SKEW = Math.toRadians(75);
    private static final double GREATEST_CHANGE = 0.3;

    void run() {
        stretch();
        Surface surface = road.surfaces().get(number);
        if (surface instanceof Spectral spectral) {
            spectrum(spectral);
        } else if (surface instanceof Setts setts) {
            setts(setts);
        } else if (surface instanceof Washboard washboard) {
            washboard(washboard);
        } else if (surface instanceof Ruts ruts) {
            ruts(ruts);
        } else if (surface instanceof Twist twist) {
            faults.positive(path() + ".height", twist.height());
            faults.positive(path() + ".length", twist.length());
            faults.positive(path() + ".across", twist.across());
        } else if (surface instanceof Joints joints) {
            joints(joints);
        } else if (surface instanceof Stones stones) {
            stones(stones);
        } else if (surface instanceof Measured measured) {
            measured(measured);
        }
    }

    private Surface surface() {
        return road.surfaces().get(number);
    }

    private String path() {
        return item + "." + word(surface());
    }

    private static String word(Surface surface) {
        return surface instanceof Spectral
                ? "spectrum"
                : surface.getClass().getSimpleName().toLowerCase(Locale.ROOT);
    }

    private void stretch() {
        Surface.Stretch stretch = surface().stretch();
        stretch.from().ifPresent(from -> {
            double reach = reach();
            if (from.value() <= reach) {
                faults.add(
                        path() + ".from",
                        from.written(),
                        "is so close that a wheel stands on the surface at the start",
                        String.format(Locale.ROOT, "more than %.2f m, the reach of the wheels", reach),
                        "move it farther ahead, or leave 'from' out",
                        "vehicles");
            }
        });
        if (stretch.to().isPresent() && stretch.end() < stretch.begin() + SHORTEST_STRETCH) {
            faults.add(
                    path() + ".to",
                    stretch.to().get().written(),
                    "is not beyond its beginning at "
                            + stretch.from().map(Measure::written).orElse("1 m"),
                    String.format(Locale.ROOT, "at least %.1f m beyond it", SHORTEST_STRETCH),
                    "give the station where the surface ends",
                    path() + ".from");
        }
    }

    /** How far ahead of the front axle a wheel may touch the road. */
    private double reach() {
        double farthest = 0;
        for (Entrant entrant : entrants) {
            for (Axle axle : entrant.vehicle().axles()) {
                double print =
                        axle.wheel().footprintLength().map(l -> l.value() / 2).orElse(0.0);
                farthest = Math.max(
                        farthest,
                        axle.wheel().radius() + print - axle.behindFrontAxle().value());
            }
        }
        return farthest;
    }

    private void spectrum(Spectral surface) {
        RoughnessSpectrum spectrum = surface.spectrum();
        String path = path();
        faults.positive(path + ".roughness", spectrum.roughness());
        waviness(path + ".waviness", spectrum.waviness());
        spectrum.bend().ifPresent(bend -> {
            faults.positive(path + ".bend", bend.at());
            waviness(path + ".waviness", bend.waviness());
        });
        band(spectrum, path + ".band");
        if (surface.coherence() instanceof Coherence.Decay decay) {
            faults.positive(path + ".coherence.decay", decay.decay());
        } else if (surface.coherence() instanceof Coherence.Distance distance) {
            faults.positive(path + ".coherence.length", distance.length());
        }
        for (int i = 0; i < number; i++) {
            if (road.surfaces().get(i) instanceof Spectral other
                    && other.seed() == surface.seed()
                    && other.stretch().begin() < surface.stretch().end()
                    && surface.stretch().begin() < other.stretch().end()) {
                faults.add(
                        path + ".seed",
                        String.valueOf(surface.seed()),
                        "is the seed of surfaces[" + i
                                + "] too, which lies under it: the two would rise and fall together",
                        "a seed of its own for each spectrum",
                        "write seed: " + (surface.seed() + 1));
            }
        }
    }

    private void waviness(String path, double waviness) {
        if (!(waviness >= 1 && waviness <= 4)) {
            faults.add(
                    path,
                    String.valueOf(waviness),
                    waviness < 1 ? "is less than 1" : "is more than 4",
                    "a waviness from 1 to 4; roads have about 2",
                    "write 2 where it is not known");
        }
    }

    private void band(RoughnessSpectrum spectrum, String path) {
        faults.positive(path, spectrum.lowest());
        faults.positive(path, spectrum.highest());
        if (!(spectrum.lowest().value() > 0) || !(spectrum.highest().value() > 0)) {
            return;
        }
        if (spectrum.highest().value() < 2 * spectrum.lowest().value()) {
            faults.add(
                    path,
                    spectrum.highest().written(),
                    "is less than twice the lower end of " + spectrum.lowest().written(),
                    "the lowest wavenumber, then the highest, at least an octave apart",
                    "write them in this order, as in [0.011 cycle/m, 10 cycle/m]");
        } else if (spectrum.highest().value() > FINEST) {
            faults.within(path, spectrum.highest(), 0, FINEST, "check the unit");
        } else if (spectrum.lowest().value() < LONGEST_WAVE) {
            faults.within(path, spectrum.lowest(), LONGEST_WAVE, FINEST, "check the unit");
        }
    }

    private void setts(Setts setts) {
        String path = path();
        faults.positive(path + ".length", setts.length());
        faults.positive(path + ".width", setts.width());
        faults.notNegative(path + ".crown", setts.crown());
        faults.notNegative(path + ".joint", setts.joint());
        faults.notNegative(path + ".joint depth", setts.jointDepth());
        faults.notNegative(path + ".unevenness", setts.unevenness());
        change(path + ".irregularity", setts.irregularity());
        if (setts.joint().value() >= setts.length().value() / 2) {
            faults.add(
                    path + ".joint",
                    setts.joint().written(),
                    "is not less than half the length of a stone, "
                            + setts.length().written(),
                    "the clear width between two stones",
                    "give the length from joint to joint, and the joint's width",
                    path + ".length");
        }
        climbed(
                path + ".joint depth",
                setts.jointDepth(),
                setts.jointDepth().value() + setts.crown().value());
    }

    private void change(String path, Measure share) {
        if (share.value() < 0 || share.value() > GREATEST_CHANGE) {
            faults.within(path, share, 0, GREATEST_CHANGE, "give the standard deviation over the mean, such as 5 %");
        }
    }

    private void washboard(Washboard washboard) {
        String path = path();
        faults.positive(path + ".pitch", washboard.pitch());
        faults.positive(path + ".height", washboard.height());
        change(path + ".drift", washboard.drift());
        if (washboard.pitch().value() > 0
                && washboard.height().value() >= washboard.pitch().value() / 2) {
            faults.add(
                    path + ".height",
                    washboard.height().written(),
                    "is half the pitch of " + washboard.pitch().written() + " or more",
                    "a height well below the pitch",
                    "check the unit",
                    path + ".pitch");
        }
    }

    private void ruts(Ruts ruts) {
        String path = path();
        faults.positive(path + ".depth", ruts.depth());
        faults.positive(path + ".width", ruts.width());
        faults.positive(path + ".apart", ruts.apart());
        faults.positive(path + ".length", ruts.length());
        if (ruts.variation().value() < 0 || ruts.variation().value() > 1) {
            faults.within(
                    path + ".variation", ruts.variation(), 0, 1, "give the standard deviation over the mean depth");
        }
    }

    private void joints(Joints joints) {
        String path = path();
        faults.positive(path + ".every", joints.every());
        faults.notNegative(path + ".gap", joints.gap());
        faults.notNegative(path + ".depth", joints.depth());
        faults.notNegative(path + ".lip", joints.lip());
        if (joints.gap().value() >= joints.every().value()) {
            faults.add(
                    path + ".gap",
                    joints.gap().written(),
                    "is not less than the distance between joints, "
                            + joints.every().written(),
                    "the clear width of a joint",
                    "check the unit",
                    path + ".every");
        }
        if (Math.abs(joints.skew().value()) > GREATEST_SKEW) {
            faults.add(
                    path + ".skew",
                    joints.skew().written(),
                    "is more than 75 deg",
                    "an angle to the square across the road",
                    "write 0 deg for joints square across the road");
        }
        climbed(path + ".depth", joints.depth(), joints.depth().value());
    }

    private void stones(Stones stones) {
        String path = path();
        faults.positive(path + ".per metre", stones.perMetre());
        faults.positive(path + ".strip", stones.strip());
        faults.positive(path + ".size", stones.size());
        faults.positive(path + ".proud", stones.proud());
        if (stones.perMetre().value() > MOST_STONES) {
            faults.within(path + ".per metre", stones.perMetre(), 0, MOST_STONES, "use a spectrum for gravel");
        }
        if (stones.spread().value() < 1 || stones.spread().value() > 2) {
            faults.within(
                    path + ".spread",
                    stones.spread(),
                    1,
                    2,
                    "give the size that 84 % of the stones do not exceed, over the median size");
        }
        if (stones.proud().value() > 1) {
            faults.within(path + ".proud", stones.proud(), 0, 1, "give the height above the ground over the width");
        }
        climbed(path + ".size", stones.size(), stones.largest() * stones.proud().value());
    }

    /** A wheel climbs nothing as high as its own centre. */
    private void climbed(String path, Measure measure, double height) {
        for (Entrant entrant : entrants) {
            for (Axle axle : entrant.vehicle().axles()) {
                if (height >= axle.wheel().radius()) {
                    faults.add(
                            path,
                            measure.written(),
                            String.format(Locale.ROOT, "makes steps of %.0f mm, ", 1000 * height)
                                    + "not lower than the centre of a wheel, " + axle.name() + " of "
                                    + entrant.vehicle().name() + " with a diameter of "
                                    + axle.wheel().diameter().written(),
                            "steps below half the diameter of every wheel",
                            "check the unit",
                            "vehicles");
                    return;
                }
            }
        }
    }

    private void measured(Measured measured) {
        String path = path();
        if (measured.trend() instanceof Measured.HighPass highPass) {
            faults.positive(path + ".heights.high-pass", highPass.length());
        }
        Optional<Measure> every = measured.spacing();
        faults.positive(path + ".every", every);
        double mean = measured.profile().length() / (measured.profile().size() - 1);
        every.filter(d -> d.value() > 0 && d.value() < mean * (1 - 1e-9))
                .ifPresent(d -> faults.add(
                        path + ".every",
                        d.written(),
                        String.format(Locale.ROOT, "is closer than the profile's own points, %.4g m apart", mean),
                        "a spacing wider than theirs",
                        "leave 'every' out: the curve goes through the points as they are"));
        every.filter(d -> d.value() > measured.profile().length() / 4)
                .ifPresent(d -> faults.add(
                        path + ".every",
                        d.written(),
                        String.format(
                                Locale.ROOT,
                                "leaves less than four points of a profile of %.4g m",
                                measured.profile().length()),
                        "a length such as 20 mm",
                        "check the unit"));
    }
}
