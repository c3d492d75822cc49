package org.ridewright.report;

import java.util.List;
import org.ridewright.io.OwnRide;
import org.ridewright.study.RideMeasure;
import org.ridewright.why.Choices;
import org.ridewright.why.Skipped;
import org.ridewright.why.UsualRide;
import org.ridewright.why.WhyFindings;
import org.ridewright.why.WhyRun;

/**
 * What findings of {@code why} rest on, in words.
 *
 * @param vehicle its name
 * @param file of the vehicle
 * @param ride what was ridden; a noun
 * @param road what draws do to the road; a sentence
 * @param load name of the load case
 * @param program with its version
 * @param skipped ingredients that stayed as they are
 * @param remarks on the ride as it is, of the vehicle as written
 * @param whole whether every choice was ridden in every draw
 */
public record WhyBasis(
        String vehicle,
        String file,
        String ride,
        String road,
        String load,
        String program,
        List<Skipped> skipped,
        List<String> remarks,
        boolean whole) {
    public WhyBasis {
        skipped = List.copyOf(skipped);
        remarks = List.copyOf(remarks);
    }

    /** The usual ride. */
    public static String usual(UsualRide ride) {
        return "a plank " + Numbers.of(1000 * UsualRide.HEIGHT, 2) + " mm high and "
                + Numbers.of(1000 * UsualRide.LENGTH, 3)
                + " mm long, square-edged, under both wheels, and "
                + Numbers.of(ride.gravelLength(), 3)
                + " m of gravel (spectrum after J. Y. Wong, from memory; both tracks "
                + "as on isotropic ground), at " + ride.speedWords();
    }

    /** What draws do to the ride of a scenario of the user's. */
    public static String ownRoad(OwnRide ride) {
        int own = ride.spread().size();
        return (own == 0
                        ? "Nothing in the scenario has a tolerance: every draw rode its roads as written."
                        : "Of the scenario itself " + own + (own == 1 ? " value was" : " values were")
                                + " drawn with them.")
                + " Roads of chance kept their seeds, so that intervals say nothing of other stretches."
                + (ride.instead().isEmpty()
                        ? ""
                        : " Cushions and occupants are those that the scenario gives the vehicle.");
    }

    /** What draws do to the road of the usual ride. */
    public static String usualRoad(UsualRide ride, int draws) {
        return "Each draw rode another stretch of the same kind of gravel (seeds " + UsualRide.gravelSeed(0) + " to "
                + UsualRide.gravelSeed(draws - 1) + "; as written: seed " + UsualRide.gravelSeed(-1)
                + "), the same on both sides of every difference.";
    }

    /** For print, in the first person of nobody. */
    List<String> methods(WhyFindings findings) {
        int swaps = findings.swaps().size();
        int lost = findings.lost();
        String all = swaps <= Choices.MOST_WHOLE ? "all " + (1 << swaps) + " combinations" : "each alone and in pairs";
        return List.of(
                "The ride of the " + vehicle + " (" + file + "), load '" + load + "', was simulated over " + ride
                        + ", with a model of rigid masses, springs with dry friction, and wheels that can leave the ground, solved from event to event by "
                        + program
                        + ". Each ingredient was exchanged for its stated alternative, alone, in pairs and all together"
                        + (whole ? ", and in every combination" : "; the vehicle as written in " + all) + ".",
                "The " + findings.uncertainValues()
                        + " values that have a tolerance, those of the alternatives included, were drawn jointly "
                        + (findings.draws() + lost) + " times (Latin hypercube, seed " + WhyRun.SEED
                        + "; a tolerance taken as a standard uncertainty, JCGM 100:2008, 4.3)"
                        + (findings.replaced() == 0
                                ? ""
                                : "; " + findings.replaced()
                                        + " draws of which no such vehicle can be were replaced by others")
                        + (lost == 0
                                ? ""
                                : "; " + lost
                                        + " draws had to be left out, since one of their combinations could not be ridden")
                        + ". " + road,
                "A contribution is the difference that an exchange makes to a number, over that number before it, both of the same draw; "
                        + "intervals are from the 5 % to the 95 % quantile of the draws (r/(n + 1) for the r-th smallest of n). They say what the "
                        + "tolerances leave open, and nothing of what the model leaves out.",
                "The interaction of two exchanges is what both together do less what each does alone. The share of an exchange is its mean "
                        + "effect over all orders in which the exchanges could be made (Shapley 1953); shares add up to what all do together.",
                measures(findings));
    }

    private static String measures(WhyFindings findings) {
        boolean seated = findings.questions().stream().anyMatch(q -> q.measure() == RideMeasure.SEAT_RMS);
        return (seated
                        ? "Weighted r.m.s. and vibration dose value are of ISO 2631-1:1997 (W_k, vertical, at the seat, the worst of the occupied seats); "
                                + "heave, jolt and buzz are the unweighted r.m.s. there below 3 Hz, from 3 to 10 Hz and above 10 Hz. "
                        : "")
                + "The peak is the greatest unweighted vertical acceleration at "
                + (seated ? "these seats." : "the places read off.");
    }

    /** A line for a list of references. */
    String citation(int draws) {
        return program + ": ./ridewright why " + file + ", over " + ride + ", load '" + load + "', " + draws
                + " draws, seed " + WhyRun.SEED + (whole ? ", every combination" : "")
                + ". Model and methods: docs/model.md and docs/why.md of the same version.";
    }
}
