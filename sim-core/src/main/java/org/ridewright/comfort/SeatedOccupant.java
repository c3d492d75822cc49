package org.ridewright.comfort;

import java.util.List;
import java.util.Optional;
import org.hipparchus.complex.Complex;

/**
 * A seated person in vertical motion, as a mass fixed to the seat and parts on springs and dampers: parameters of published models, their
 * apparent mass, and what a cushion under them lets through.
 *
 * <p>The masses are those on the seat, about three quarters of a person; the rest stands on the floor. All models are linear and for one posture
 * and strength of vibration; people's resonance falls as the vibration grows.
 *
 * @param name short name of the model
 * @param fixedMass moves with the seat (kg), ≥ 0
 * @param stages parts that stand on it; none for a rigid mass
 * @param source author and year
 * @param provenance how the parameters were obtained
 */
public record SeatedOccupant(
        String name, double fixedMass, List<OccupantStage> stages, String source, Provenance provenance) {
    /** How far the parameters can be relied on. */
    public enum Provenance {
        /** Frequency and damping ratio read in a handbook, masses from memory. */
        PARTLY_SEEN,
        /** Nothing seen in print. */
        FROM_MEMORY,
        /** Given by the user. */
        STATED
    }

    /** Share of a seated person's mass that the seat carries (from memory). */
    public static final double SHARE_ON_SEAT = 0.75;

    /**
     * One stage: f0 = 5 Hz, ζ = 0.475 seen in a handbook that quotes the authors; the masses, 45.6 and 6 kg, from memory. 60
     * people. k and c follow from them.
     */
    public static final SeatedOccupant FG1 = new SeatedOccupant(
            "FG1",
            6.0,
            List.of(resonant("body", 45.6, 5.0, 0.475)),
            "Fairley and Griffin 1989",
            Provenance.PARTLY_SEEN);

    /** One stage. */
    public static final SeatedOccupant WG1 = new SeatedOccupant(
            "WG1",
            7.8,
            List.of(new OccupantStage("body", 43.4, 44_130, 1485)),
            "Wei and Griffin 1998, one-degree model",
            Provenance.FROM_MEMORY);

    /** Two stages side by side. */
    public static final SeatedOccupant WG2 = new SeatedOccupant(
            "WG2",
            6.7,
            List.of(new OccupantStage("body 1", 33.4, 35_776, 761), new OccupantStage("body 2", 10.7, 38_374, 458)),
            "Wei and Griffin 1998, two-degree model",
            Provenance.FROM_MEMORY);

    /** Two branches, a head on one of them; for a person of 75 kg. To be confirmed against the standard before it is called by its name. */
    public static final SeatedOccupant ISO_5982 = new SeatedOccupant(
            "ISO5982",
            2,
            List.of(
                    new OccupantStage("lower body", 6, 9990, 387),
                    new OccupantStage(
                            "upper body", 45, 36_200, 1390, List.of(new OccupantStage("head", 2, 34_400, 234)))),
            "ISO 5982:2001 annex",
            Provenance.FROM_MEMORY);

    /** @throws IllegalArgumentException if the fixed mass is negative or not finite, or nothing has mass */
    public SeatedOccupant {
        stages = List.copyOf(stages);
        if (!(fixedMass >= 0) || Double.isInfinite(fixedMass) || (fixedMass == 0 && stages.isEmpty())) {
            throw new IllegalArgumentException(
                    "fixed mass must be ≥ 0 kg, and > 0 without stages, got " + fixedMass + " kg (" + name + ")");
        }
    }

    /** The published models. */
    public static List<SeatedOccupant> published() {
        return List.of(FG1, WG1, WG2, ISO_5982);
    }

    /** Nothing that gives: a sack of the mass that rests on the seat (kg). */
    public static SeatedOccupant rigid(double massOnSeat) {
        return new SeatedOccupant("rigid", massOnSeat, List.of(), "rigid mass", Provenance.STATED);
    }

    /** A stage of given natural frequency f0 (Hz) and damping ratio ζ on a seat held still: k = m(2πf0)², c = 2ζ√(km). */
    private static OccupantStage resonant(String name, double mass, double frequency, double ratio) {
        double w = 2 * Math.PI * frequency;
        return new OccupantStage(name, mass, mass * w * w, 2 * ratio * mass * w);
    }

    /** Mass on the seat at rest (kg). */
    public double massOnSeat() {
        return fixedMass + stages.stream().mapToDouble(OccupantStage::totalMass).sum();
    }

    /** The same model for a person whose seat carries another mass: masses, rates and dampings in proportion, frequencies unchanged. */
    public SeatedOccupant scaledTo(double massOnSeat) {
        double factor = massOnSeat / massOnSeat();
        if (!(factor > 0) || Double.isInfinite(factor)) {
            throw new IllegalArgumentException("mass on the seat must be > 0 kg and finite, got " + massOnSeat + " kg");
        }
        return new SeatedOccupant(
                name, factor * fixedMass, scaled(stages, factor), source + ", scaled in mass", provenance);
    }

    private static List<OccupantStage> scaled(List<OccupantStage> stages, double f) {
        return stages.stream()
                .map(s -> new OccupantStage(
                        s.name(), f * s.mass(), f * s.stiffness(), f * s.damping(), scaled(s.carried(), f)))
                .toList();
    }

    /** Apparent mass on the seat (kg) at a frequency (Hz): force over acceleration, {@code m0 + Σ AM_i}. */
    public Complex apparentMass(double frequency) {
        Complex s = laplace(frequency);
        Complex sum = new Complex(fixedMass);
        for (OccupantStage stage : stages) {
            sum = sum.add(stage.apparentMass(s));
        }
        return sum;
    }

    /** Motion of a named part over that of the seat, at a frequency (Hz); empty where the model has no such part. */
    public Optional<Complex> transmissibilityTo(String part, double frequency) {
        return follow(stages, part, laplace(frequency), Complex.ONE);
    }

    private static Optional<Complex> follow(List<OccupantStage> stages, String part, Complex s, Complex below) {
        for (OccupantStage stage : stages) {
            Complex here = below.multiply(stage.transmissibility(s));
            if (stage.name().equals(part)) {
                return Optional.of(here);
            }
            Optional<Complex> above = follow(stage.carried(), part, s, here);
            if (above.isPresent()) {
                return above;
            }
        }
        return Optional.empty();
    }

    /**
     * What a cushion under this person lets through from floor to seat, {@code T = (k + c s)/(k + c s + s² AM)}, at a frequency (Hz).
     *
     * @param stiffness k of the cushion (N/m), &gt; 0
     * @param damping c of the cushion (N·s/m), ≥ 0
     */
    public Complex cushionTransmissibility(double stiffness, double damping, double frequency) {
        Complex s = laplace(frequency);
        Complex z = s.multiply(damping).add(stiffness);
        return z.divide(s.multiply(s).multiply(apparentMass(frequency)).add(z));
    }

    private static Complex laplace(double frequency) {
        return new Complex(0, 2 * Math.PI * frequency);
    }
}
