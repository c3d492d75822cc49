package org.ridewright.ringdown;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * All releases of a record.
 *
 * @param releases in order of time, at least one
 * @param leftOut what looked like a release and could not be measured, as whole sentences
 */
public record RingDowns(List<RingDown> releases, List<String> leftOut) {
    public RingDowns {
        releases = List.copyOf(releases);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * A place where a record is not to be trusted.
     *
     * @param from (s)
     * @param to (s)
     * @param words what is wrong there, such as "the sensor clipped"
     */
    public record Flaw(double from, double to, String words) {}

    /**
     * Finds and measures them.
     *
     * @param stretches unbroken, in order of time; nothing is fitted across their ends
     * @param flaws a release whose decay holds one is left out
     * @throws NoRingDownException if nothing can be measured
     */
    public static RingDowns of(List<Stretch> stretches, List<Flaw> flaws, RingDownOptions options) {
        List<RingDown> releases = new ArrayList<>();
        List<String> leftOut = new ArrayList<>();
        NoRingDownException first = null;
        for (int s = 0; s < stretches.size(); s++) {
            Stretch stretch = stretches.get(s);
            ReleaseFinder.Found found = new ReleaseFinder(stretch, options).find();
            for (ReleaseFinder.Release release : found.releases()) {
                try {
                    refuseFlawed(release, flaws);
                    refuseCut(release, stretch, s + 1 < stretches.size());
                    releases.add(ReleaseFit.of(stretch, release, options));
                } catch (NoRingDownException unfit) {
                    first = first == null ? unfit : first;
                    leftOut.add(String.format(
                            Locale.ROOT, "The motion at %.2f s is left out: %s.", release.at(), unfit.fault()));
                }
            }
            for (ReleaseFinder.Release release : found.tooShort()) {
                NoRingDownException unfit = tooShort(release);
                first = first == null ? unfit : first;
            }
        }
        if (releases.isEmpty()) {
            throw first != null
                    ? first
                    : new NoRingDownException(
                            "no release is found",
                            String.format(
                                    Locale.ROOT,
                                    "quiet, a push, then a free swing of %.2g to %.2g Hz that dies away over two cycles or more",
                                    options.lowest(),
                                    options.highest()),
                            "push further down, let go at once, stand clear and wait until it stands; if the bounce is"
                                    + " slower or faster, state it with --band");
        }
        return new RingDowns(releases, leftOut);
    }

    /** All of them as one measurement, where there are several and they are alike. */
    public Optional<Together> together() {
        return Together.of(releases);
    }

    private static void refuseFlawed(ReleaseFinder.Release release, List<Flaw> flaws) {
        for (Flaw flaw : flaws) {
            if (flaw.to() > release.at() - release.halfPeriod() && flaw.from() < release.end()) {
                throw new NoRingDownException(
                        flaw.words(),
                        "a ring-down recorded whole",
                        "choose a wider range in the logger, or push less far, and record again");
            }
        }
    }

    /** A stretch that ends in the midst of a decay was cut by a dropout. */
    private static void refuseCut(ReleaseFinder.Release release, Stretch stretch, boolean another) {
        List<ReleaseFinder.Extreme> extremes = release.extremes();
        ReleaseFinder.Extreme last = extremes.get(extremes.size() - 1);
        boolean cut = another
                && stretch.end() - last.time() < release.halfPeriod()
                && last.size() > 0.3 * extremes.get(0).size();
        if (cut) {
            throw new NoRingDownException(
                    String.format(
                            Locale.ROOT, "rows are missing from %.2f s on, in the midst of the decay", stretch.end()),
                    "a ring-down recorded whole",
                    "record again without gaps; close other programs on the phone");
        }
    }

    private static NoRingDownException tooShort(ReleaseFinder.Release release) {
        return new NoRingDownException(
                String.format(
                        Locale.ROOT,
                        "it comes to rest after %s of a cycle, too soon to tell a frequency and a decay",
                        switch (release.extremes().size()) {
                            case 1 -> "less than half";
                            case 2 -> "half";
                            default -> "the whole";
                        }),
                "a cycle and a half or more",
                "push further down before letting go; if friction stops it at once, the log cannot tell more than that");
    }
}
