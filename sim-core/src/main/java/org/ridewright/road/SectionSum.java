package org.ridewright.road;

import java.util.ArrayList;
import java.util.List;

/** Curved sections, and perhaps a slope, on top of one another. */
final class SectionSum implements Section {
    private final Section[] parts;

    private SectionSum(List<Section> parts) {
        this.parts = parts.toArray(new Section[0]);
    }

    /** The sum in its simplest form: straight ones become one, and a single curve upon a level is that curve raised. */
    static Section of(List<Section> sections, double at) {
        double z = 0;
        double slope = 0;
        List<Section> curved = new ArrayList<>();
        for (Section section : sections) {
            if (section instanceof Straight straight) {
                z += straight.height(at);
                slope += straight.slope();
            } else {
                curved.add(section);
            }
        }
        if (curved.isEmpty()) {
            return new Straight(at, z, slope);
        }
        if (slope != 0) {
            curved.add(new Straight(at, z, slope));
        } else if (z != 0) {
            curved.set(0, curved.get(0).raised(z));
        }
        return curved.size() == 1 ? curved.get(0) : new SectionSum(curved);
    }

    @Override
    public double height(double x) {
        double sum = 0;
        for (Section part : parts) {
            sum += part.height(x);
        }
        return sum;
    }

    @Override
    public double slope(double x) {
        double sum = 0;
        for (Section part : parts) {
            sum += part.slope(x);
        }
        return sum;
    }

    @Override
    public double secondDerivative(double x) {
        double sum = 0;
        for (Section part : parts) {
            sum += part.secondDerivative(x);
        }
        return sum;
    }

    @Override
    public double area(double a, double b) {
        double sum = 0;
        for (Section part : parts) {
            sum += part.area(a, b);
        }
        return sum;
    }

    @Override
    public double hollowest(double a, double b) {
        double sum = 0;
        for (Section part : parts) {
            sum += part.hollowest(a, b);
        }
        return sum;
    }

    @Override
    public Section raised(double rise) {
        List<Section> raised = new ArrayList<>(List.of(parts));
        raised.set(0, raised.get(0).raised(rise));
        return new SectionSum(raised);
    }
}
