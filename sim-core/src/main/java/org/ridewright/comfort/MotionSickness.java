package org.ridewright.comfort;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Motion sickness dose of vertical motion, {@code MSDV_z = {∫ a_wf² dt}^½ = a_wf t^½} over the time of exposure t, and the share
 * of people expected to vomit, {@code Km MSDV_z} in percent with Km = 1/3.
 *
 * <p>Km is for a mixed population of adults who are not used to such motion, between 0.1 and 0.5 Hz; women are more prone than men, and
 * the young more than the old. Fore-and-aft, lateral and rolling motion and what people see make sick too and are not in it.
 *
 * <p>Source: ISO 2631-1:1997, clause 9 and annex D (from memory).
 *
 * @param rms a_wf, r.m.s. of the vertical acceleration weighted by Wf (m/s²)
 * @param measured window of the measurement (s)
 * @param exposure t (s)
 */
public record MotionSickness(double rms, double measured, double exposure) {
    /** Km (s^1.5/m). */
    public static final double KM = 1.0 / 3;

    /** Exposures for which Km was found (s). */
    public static final double SHORTEST_EXPOSURE = 20 * 60;

    /** As above. */
    public static final double LONGEST_EXPOSURE = 6 * 3600;

    /** Percentages up to which it was found (%). */
    public static final double HIGHEST_PERCENTAGE = 70;

    /** Shortest measurement that may stand for a longer exposure (s). */
    public static final double SHORTEST_MEASUREMENT = 240;

    /** MSDV_z (m/s^1.5). */
    public double dose() {
        return rms * Math.sqrt(exposure);
    }

    /** Km MSDV_z (%), as the formula gives it: see {@link #reservations}. */
    public double percentage() {
        return KM * dose();
    }

    /** Why the percentage should not be relied on; empty where it is within what it was found for. */
    public List<String> reservations() {
        List<String> list = new ArrayList<>();
        if (exposure < SHORTEST_EXPOSURE || exposure > LONGEST_EXPOSURE) {
            list.add(String.format(
                    Locale.ROOT,
                    "the percentage was found for exposures of 20 min to 6 h, not %.3g min",
                    exposure / 60));
        }
        if (percentage() > HIGHEST_PERCENTAGE) {
            list.add("the percentage was found up to 70 % only");
        }
        if (measured < exposure && measured < SHORTEST_MEASUREMENT) {
            list.add(String.format(
                    Locale.ROOT, "%.3g s were measured; less than 240 s hardly stand for a whole ride", measured));
        }
        return List.copyOf(list);
    }
}
