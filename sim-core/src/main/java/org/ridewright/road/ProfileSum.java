package org.ridewright.road;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Adds profiles up in one pass from left to right. Joints nearer to each other than round-off become one; straight sections
 * that continue one another become one.
 */
final class ProfileSum {
    private static final double SAME_STATION = 1e-12;
    private static final double SAME_HEIGHT = 1e-15;

    private final List<RoadProfile> profiles;
    private final boolean joinsStraights;

    ProfileSum(List<RoadProfile> profiles) {
        this(profiles, true);
    }

    /** @param joinsStraights false keeps every joint, so that sections do not depend on what lies far away */
    ProfileSum(List<RoadProfile> profiles, boolean joinsStraights) {
        this.joinsStraights = joinsStraights;
        this.profiles = new ArrayList<>(profiles);
        this.profiles.sort(Comparator.comparingDouble(ProfileSum::beginning));
    }

    RoadProfile build() {
        if (profiles.size() == 1) {
            return profiles.get(0);
        }
        double[] joints = joints();
        double[] ahead = heightsAhead();
        List<RoadProfile> underway = new ArrayList<>();
        int started = 0;
        double passed = 0;
        List<Double> keptJoints = new ArrayList<>();
        List<Section> kept = new ArrayList<>();
        for (int i = 0; i + 1 < joints.length; i++) {
            double middle = (joints[i] + joints[i + 1]) / 2;
            while (started < profiles.size() && beginning(profiles.get(started)) < middle) {
                underway.add(profiles.get(started++));
            }
            List<Section> sections = new ArrayList<>();
            for (int k = 0; k < underway.size(); k++) {
                RoadProfile profile = underway.get(k);
                if (profile.joint(profile.joints() - 1) < middle) {
                    passed += profile.heightAfter();
                    underway.remove(k--);
                } else {
                    sections.add(profile.sectionOrLevel(profile.sectionNumberAt(middle)));
                }
            }
            sections.add(Section.level(passed + ahead[started]));
            Section section = Section.sum(sections, joints[i]);
            if (kept.isEmpty() || !joinsStraights || !continues(kept.get(kept.size() - 1), section, joints[i])) {
                keptJoints.add(joints[i]);
                kept.add(section);
            }
        }
        for (RoadProfile profile : underway) {
            passed += profile.heightAfter();
        }
        if (kept.isEmpty()) {
            return new RoadProfile(new double[0], new Section[0], ahead[0], ahead[0]);
        }
        keptJoints.add(joints[joints.length - 1]);
        double[] stations = keptJoints.stream().mapToDouble(Double::doubleValue).toArray();
        return new RoadProfile(stations, kept.toArray(new Section[0]), ahead[0], passed + ahead[started]);
    }

    private static boolean continues(Section last, Section next, double at) {
        return last instanceof Section.Straight a
                && next instanceof Section.Straight b
                && a.slope() == b.slope()
                && Math.abs(a.height(at) - b.height(at)) <= SAME_HEIGHT;
    }

    /** Sum of the heights before profiles i, i + 1, … */
    private double[] heightsAhead() {
        double[] ahead = new double[profiles.size() + 1];
        for (int i = profiles.size() - 1; i >= 0; i--) {
            ahead[i] = ahead[i + 1] + profiles.get(i).heightBefore();
        }
        return ahead;
    }

    private double[] joints() {
        int n = 0;
        for (RoadProfile profile : profiles) {
            n += profile.joints();
        }
        double[] all = new double[n];
        n = 0;
        for (RoadProfile profile : profiles) {
            for (int i = 0; i < profile.joints(); i++) {
                all[n++] = profile.joint(i);
            }
        }
        Arrays.sort(all);
        int kept = 0;
        for (double x : all) {
            if (kept == 0 || x - all[kept - 1] > SAME_STATION * Math.max(1, Math.abs(x))) {
                all[kept++] = x;
            }
        }
        return Arrays.copyOf(all, kept);
    }

    private static double beginning(RoadProfile profile) {
        return profile.joints() == 0 ? Double.POSITIVE_INFINITY : profile.joint(0);
    }
}
