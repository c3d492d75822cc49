package org.ridewright.wheel;

import java.util.ArrayList;
import java.util.List;
import org.ridewright.road.RoadProfile;
import org.ridewright.road.Section;

/** Lists the chains of touches that a disc could roll along, from the level before a road to the level after it. */
final class ChainBuilder {
    /** Heights nearer than this are one (m). */
    private static final double SAME_HEIGHT = 1e-12;
    /** Slope angles nearer than this are one (rad). */
    private static final double SAME_ANGLE = 1e-10;

    private final RoadProfile road;
    private final double R;
    private final List<TouchChain> chains = new ArrayList<>();
    private List<Touch> current = new ArrayList<>();
    private Double face;

    ChainBuilder(RoadProfile road, double radius) {
        this.road = road;
        this.R = radius;
    }

    List<TouchChain> build() {
        int n = road.sections();
        if (n == 0) {
            addSection(Section.level(road.heightBefore()), Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
            endChain();
            return chains;
        }
        Section left = Section.level(road.heightBefore());
        addSection(left, Double.NEGATIVE_INFINITY, road.joint(0));
        for (int i = 0; i <= n; i++) {
            double x = road.joint(i);
            Section right = i < n ? road.section(i) : Section.level(road.heightAfter());
            joint(x, left, right);
            addSection(right, x, i < n ? road.joint(i + 1) : Double.POSITIVE_INFINITY);
            left = right;
        }
        endChain();
        return chains;
    }

    void add(Touch touch) {
        if (touch.to() > touch.from()) {
            current.add(touch);
        }
    }

    void endChain() {
        if (!current.isEmpty()) {
            chains.add(new TouchChain(current, face));
            current = new ArrayList<>();
        }
        face = null;
    }

    private void addSection(Section section, double a, double b) {
        if (section instanceof Section.Straight straight) {
            add(Touch.OnStraight.of(straight, a, b, R));
        } else if (section instanceof Section.Arc arc) {
            add(Touch.OnRound.arc(arc, a, b, R));
        } else {
            TouchOnCurve.split(section, a, b, R, this);
        }
    }

    private void joint(double x, Section left, Section right) {
        double zl = left.height(x);
        double zr = right.height(x);
        double alphaLeft = Math.atan(left.slope(x));
        double alphaRight = Math.atan(right.slope(x));
        if (zr > zl + SAME_HEIGHT) {
            endChain();
            face = x;
            corner(x, zr, Math.PI / 2, alphaRight);
        } else if (zl > zr + SAME_HEIGHT) {
            corner(x, zl, alphaLeft, -Math.PI / 2);
            endChain();
        } else if (alphaLeft > alphaRight + SAME_ANGLE) {
            corner(x, Math.max(zl, zr), alphaLeft, alphaRight);
        } else if (alphaLeft < alphaRight - SAME_ANGLE) {
            endChain();
        }
    }

    private void corner(double x, double z, double alpha1, double alpha2) {
        if (alpha1 > alpha2) {
            add(Touch.OnRound.corner(x, z, alpha1, alpha2, R));
        }
    }
}
