package org.ridewright.yardstick;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.DoubleBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ridewright.dynamics.Element;
import org.ridewright.dynamics.Equations;
import org.ridewright.math.PiecewisePolynomial;
import org.ridewright.solver.Problem;
import org.ridewright.suspension.ForceLaw;
import org.ridewright.suspension.FrictionLaw;
import org.ridewright.suspension.Pieces;

/**
 * One problem of the yardstick as read from its file: equations with their laws, heights given every millisecond and straight in between,
 * and the accelerations of a run with very short steps to compare with.
 *
 * @param reference q̈ at each millisecond, row-major, {@code coordinates} wide
 */
record YardstickProblem(String name, Problem problem, int samples, int coordinates, double[] reference) {
    private static final double INTERVAL = 1e-3;
    private static final int HEADER = 6;
    private static final int CONTACT = 1;
    /** Slopes that differ by less than this are one straight line (m/s). */
    private static final double SAME_SLOPE = 1e-12;

    static YardstickProblem read(Path file) throws IOException {
        ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(file)).order(ByteOrder.LITTLE_ENDIAN);
        int nq = bytes.getInt();
        int ne = bytes.getInt();
        int nu = bytes.getInt();
        int nt = bytes.getInt();
        int np = bytes.getInt();
        bytes.position(HEADER * Integer.BYTES);
        DoubleBuffer numbers = bytes.asDoubleBuffer();
        double[] mass = take(numbers, nq * nq);
        take(numbers, nq * nq);
        double[] gravityStiffness = take(numbers, nq * nq);
        double[] gravityForce = take(numbers, nq);
        double[] rows = take(numbers, ne * nq);
        double[] inputs = take(numbers, ne);
        double[] laws = take(numbers, ne * np);
        double[] q = take(numbers, nq);
        double[] heights = take(numbers, nt * nu);
        double[] reference = take(numbers, nt * nq);
        List<Element> elements = new ArrayList<>();
        int sliders = 0;
        for (int e = 0; e < ne; e++) {
            ForceLaw law = law(laws, e * np);
            double[] row = new double[nq];
            System.arraycopy(rows, e * nq, row, 0, nq);
            Element.Kind kind = law.pushesOnly() ? Element.Kind.CONTACT : Element.Kind.SPRING;
            elements.add(new Element("element " + e, kind, row, (int) inputs[e], law));
            sliders += law.friction().states();
        }
        List<PiecewisePolynomial> roads = new ArrayList<>();
        for (int i = 0; i < nu; i++) {
            roads.add(straightPieces(heights, i, nu, nt));
        }
        Problem problem = new Problem(
                new Equations(mass, gravityStiffness, gravityForce, elements, nu),
                roads,
                q,
                new double[nq],
                new double[sliders],
                (nt - 1) * INTERVAL);
        String name = file.getFileName().toString().replace(".bin", "");
        return new YardstickProblem(name, problem, nt, nq, reference);
    }

    private static double[] take(DoubleBuffer from, int count) {
        double[] taken = new double[count];
        from.get(taken);
        return taken;
    }

    /** Kind, k, d in bump, d in rebound, k_p, μ, F_0, number of gapped pieces, then rate, place and side of each. */
    private static ForceLaw law(double[] x, int at) {
        List<Pieces.Piece> pieces = new ArrayList<>();
        for (int p = 0; p < (int) x[at + 7]; p++) {
            pieces.add(new Pieces.Piece(x[at + 8 + 3 * p], x[at + 9 + 3 * p], (int) x[at + 10 + 3 * p]));
        }
        double bump = x[at + 2];
        double rebound = x[at + 3];
        boolean contact = x[at] == CONTACT;
        boolean bilinear = !contact && bump != rebound;
        return new ForceLaw(
                0,
                x[at + 1],
                Pieces.of(pieces),
                bilinear ? rebound : bump,
                bilinear ? Pieces.of(List.of(new Pieces.Piece(bump - rebound, 0, 1))) : Pieces.NONE,
                Optional.empty(),
                FrictionLaw.single(x[at + 5], x[at + 6], x[at + 4]),
                contact);
    }

    /** Samples joined by straight lines; samples that lie on one line make one piece. */
    private static PiecewisePolynomial straightPieces(double[] heights, int input, int width, int samples) {
        List<Double> joints = new ArrayList<>();
        List<double[]> pieces = new ArrayList<>();
        double last = Double.NaN;
        for (int k = 0; k < samples - 1; k++) {
            double height = heights[k * width + input];
            double slope = (heights[(k + 1) * width + input] - height) / INTERVAL;
            if (!(Math.abs(slope - last) < SAME_SLOPE)) {
                joints.add(k * INTERVAL);
                pieces.add(new double[] {height, slope});
                last = slope;
            }
        }
        joints.add((samples - 1) * INTERVAL);
        return new PiecewisePolynomial(
                joints.stream().mapToDouble(x -> x).toArray(),
                pieces.toArray(double[][]::new),
                heights[(samples - 1) * width + input]);
    }

    double interval() {
        return INTERVAL;
    }
}
