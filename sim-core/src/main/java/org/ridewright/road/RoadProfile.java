package org.ridewright.road;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ridewright.math.PiecewisePolynomial;

/**
 * The height of the road along one track: smooth sections between joints, level before the first and after the last.
 *
 * <p>At a joint the height may jump and the slope may change. There is no limit to how a profile is come by; a measured one
 * or one made from a spectrum is given as a piecewise polynomial.
 */
public final class RoadProfile {
    private final double[] joints;
    private final Section[] sections;
    private final double before;
    private final double after;
    private final Optional<PiecewisePolynomial> polynomial;

    /**
     * @param joints increasing stations (m), one more than sections; none for a level road; not copied
     * @param sections between the joints; not copied
     * @param before height before the first joint (m)
     * @param after height after the last joint (m)
     */
    RoadProfile(double[] joints, Section[] sections, double before, double after) {
        this.joints = joints;
        this.sections = sections;
        this.before = before;
        this.after = after;
        this.polynomial = Optional.empty();
    }

    private RoadProfile(double[] joints, Section[] sections, PiecewisePolynomial height) {
        this.joints = joints;
        this.sections = sections;
        this.before = height.valueBefore();
        this.after = height.valueAfter();
        this.polynomial = Optional.of(height);
    }

    /** The piecewise polynomial that the profile was given as, if it was. */
    public Optional<PiecewisePolynomial> polynomial() {
        return polynomial;
    }

    /** A level road at height 0. */
    public static RoadProfile level() {
        return new RoadProfile(new double[0], new Section[0], 0, 0);
    }

    /** A profile given as a piecewise polynomial of the station: both in m. */
    public static RoadProfile of(PiecewisePolynomial height) {
        int n = height.pieces();
        double[] joints = new double[n + 1];
        Section[] sections = new Section[n];
        for (int i = 0; i < n; i++) {
            joints[i] = height.joint(i);
            double[] c = height.coefficients(i);
            sections[i] = c.length <= 2
                    ? new Section.Straight(joints[i], c[0], c.length == 2 ? c[1] : 0)
                    : new PolynomialSection(joints[i], c);
        }
        joints[n] = height.joint(n);
        return new RoadProfile(joints, sections, height);
    }

    /**
     * The road under a wheel at lateral position y. An obstacle on the left lies before wheels with y > 0, one on the right
     * before wheels with y < 0. The leading edge of a skewed one is met at {@code at + y·tan(skew)}; its length is measured
     * along the road.
     *
     * @param y left positive (m)
     * @throws IllegalArgumentException if an obstacle's dimensions exclude one another; the message says which
     */
    public static RoadProfile along(Road road, double y) {
        return new ObstacleProfiles(road).along(y);
    }

    /** The road under the centre line, every obstacle met whichever side it lies on: for vehicles without a left and right. */
    public static RoadProfile alongEverySide(Road road) {
        return new ObstacleProfiles(road).alongEverySide();
    }

    /** The profiles on top of one another; none gives a level road. */
    public static RoadProfile sum(List<RoadProfile> profiles) {
        return new ProfileSum(profiles).build();
    }

    /**
     * The sections that touch a window, level before and after them without a jump.
     *
     * @throws IllegalArgumentException if the window is not finite, or ends before it begins
     */
    RoadProfile near(double from, double to) {
        if (!(from <= to) || Double.isInfinite(from) || Double.isInfinite(to)) {
            throw new IllegalArgumentException("window of a road must run forward, got " + from + " m to " + to + " m");
        }
        int first = 0;
        while (first < joints.length && joints[first] < from) {
            first++;
        }
        int last = first;
        while (last < joints.length && joints[last] <= to) {
            last++;
        }
        // a joint at either end belongs to the window with the sections on both sides of it
        first = Math.max(0, first - 1);
        last = Math.min(joints.length - 1, last);
        if (first == 0 && last == joints.length - 1) {
            return this;
        }
        if (first >= last) {
            double height = first == 0 ? before : after;
            return new RoadProfile(new double[0], new Section[0], height, height);
        }
        double start = first == 0 ? before : sections[first].height(joints[first]);
        double end = last == sections.length ? after : sections[last - 1].height(joints[last]);
        return new RoadProfile(
                Arrays.copyOfRange(joints, first, last + 1), Arrays.copyOfRange(sections, first, last), start, end);
    }

    /** Number of sections; 0 for a level road. */
    public int sections() {
        return sections.length;
    }

    /** Section i, from joint i to joint i + 1. */
    public Section section(int i) {
        return sections[i];
    }

    /** Number of joints; 0 for a level road. */
    public int joints() {
        return joints.length;
    }

    /** Station of joint i (m). */
    public double joint(int i) {
        return joints[i];
    }

    /** Height before the first joint (m). */
    public double heightBefore() {
        return before;
    }

    /** Height after the last joint (m). */
    public double heightAfter() {
        return after;
    }

    /** Height at station x (m); at a jump the higher of the two sides, which is what a wheel would rest on. */
    public double height(double x) {
        int i = Arrays.binarySearch(joints, x);
        return i >= 0
                ? Math.max(sectionOrLevel(i - 1).height(x), sectionOrLevel(i).height(x))
                : sectionOrLevel(-i - 2).height(x);
    }

    /** Number of the section that holds x, which is no joint: −1 before the first joint, {@link #sections()} after the last. */
    public int sectionNumberAt(double x) {
        int i = Arrays.binarySearch(joints, x);
        return i >= 0 ? i : -i - 2;
    }

    /** Section i, or for i = −1 and i = {@link #sections()} the level before and after. */
    public Section sectionOrLevel(int i) {
        if (i < 0) {
            return Section.level(before);
        }
        return i >= sections.length ? Section.level(after) : sections[i];
    }
}
