package org.ridewright.road;

/** A polynomial of the distance from {@code x0}. */
final class PolynomialSection implements Section {
    private final double x0;
    private final double[] c;

    /** @param c lowest power first; not copied */
    PolynomialSection(double x0, double[] c) {
        this.x0 = x0;
        this.c = c;
    }

    @Override
    public double height(double x) {
        double d = x - x0;
        double sum = 0;
        for (int k = c.length - 1; k >= 0; k--) {
            sum = sum * d + c[k];
        }
        return sum;
    }

    @Override
    public double slope(double x) {
        double d = x - x0;
        double sum = 0;
        for (int k = c.length - 1; k >= 1; k--) {
            sum = sum * d + k * c[k];
        }
        return sum;
    }

    @Override
    public double secondDerivative(double x) {
        double d = x - x0;
        double sum = 0;
        for (int k = c.length - 1; k >= 2; k--) {
            sum = sum * d + k * (k - 1) * c[k];
        }
        return sum;
    }

    @Override
    public double area(double a, double b) {
        return areaTo(b - x0) - areaTo(a - x0);
    }

    private double areaTo(double d) {
        double sum = 0;
        for (int k = c.length - 1; k >= 0; k--) {
            sum = sum * d + c[k] / (k + 1);
        }
        return sum * d;
    }

    @Override
    public double hollowest(double a, double b) {
        double d = Math.max(Math.abs(a - x0), Math.abs(b - x0));
        double sum = 0;
        for (int k = c.length - 1; k >= 2; k--) {
            sum = sum * d + k * (k - 1) * Math.abs(c[k]);
        }
        return sum;
    }

    @Override
    public Section raised(double rise) {
        double[] raised = c.clone();
        raised[0] += rise;
        return new PolynomialSection(x0, raised);
    }
}
