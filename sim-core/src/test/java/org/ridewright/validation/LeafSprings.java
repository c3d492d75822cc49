package org.ridewright.validation;

import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.suspension.LeafRate;
import org.ridewright.suspension.LeafStress;
import org.ridewright.vehicle.Elasticity.LeafPack;
import org.ridewright.vehicle.Elasticity.Leaves;
import org.ridewright.vehicle.SpringKind;

/**
 * Rate of leaf springs from n leaves b × t of modulus E.
 *
 * <pre>
 *   half-elliptic, eye to eye L      8 E n b t³/(3 L³)
 *   quarter-elliptic, length L       E n b t³/(6 L³)
 *   full-elliptic                    half of one half-elliptic
 *   arms p + q = L                   E n b t³ L/(6 p² q²)
 *   n_f extra full-length leaves, n_g graduated, half span l, load P on each eye: deflection 12 P l³/(E b t³ (3 n_f + 2 n_g))
 * </pre>
 *
 * <p>Source: Mechanical Engineer's Data Handbook p. 35 (first two seen; author and year not noted); the last gives back the printed answers
 * of examples 10.24 and 10.25 of a textbook of machine design (seen; by memory Bhandari, Design of Machine Elements). The exercise of
 * 6 kN (by memory Khurmi) was seen without its answer, which is the formula's.
 */
final class LeafSprings implements ReferenceProblem {
    private static final ReferenceTable TABLE = ReferenceTable.read("leaf_spring.csv");
    private static final Source HANDBOOK =
            Source.book("formula of Mechanical Engineer's Data Handbook p. 35 (seen; author and year not noted)");
    private static final Source SERIES = Source.closedForm("handbook's rate, two in series");
    private static final Source BEAM = Source.closedForm("beam on unequal arms");
    private static final Source EXAMPLE =
            Source.book("machine design textbook, example 10.25 (seen; Bhandari, from memory)");
    private static final Source EXERCISE =
            Source.closedForm("formula of example 10.25; exercise of 6 kN (statement seen; Khurmi, from memory)");

    @Override
    public String title() {
        return "Leaf springs";
    }

    @Override
    public String statement() {
        return "Rate and stress from dimensions: eight leaves 60 × 7 mm, 1 m eye to eye (quarter-elliptic 0.5 m), E = 206 GPa; two "
                + "examples with extra full-length leaves.";
    }

    @Override
    public List<Check> checks() {
        LeafPack eight = pack(8, 0, 1, 60, 7, 206);
        LeafPack quarter = pack(8, 0, 0.5, 60, 7, 206);
        LeafPack uneven = new LeafPack(
                eight.leaves(), eight.length(), 0, eight.clampDeduction(), Optional.of(length(0.55)), eight.modulus());
        Rows rows = new Rows(this);
        addRate(rows, HANDBOOK, "half-elliptic", "semi_elliptic_rate", SpringKind.HALF_ELLIPTIC, eight);
        addRate(rows, HANDBOOK, "quarter-elliptic", "quarter_elliptic_rate", SpringKind.QUARTER_ELLIPTIC, quarter);
        addRate(rows, SERIES, "full-elliptic", "full_elliptic_rate", SpringKind.FULL_ELLIPTIC, eight);
        addRate(rows, BEAM, "half-elliptic, arms 450 and 550 mm", "rate", SpringKind.HALF_ELLIPTIC, uneven);
        double b2 = LeafRate.of(SpringKind.HALF_ELLIPTIC, pack(12, 2, 1.2, 60, 12, 207));
        rows.relative(EXAMPLE, "rate, two of twelve full-length", "N/mm", answer("B2", "rate"), b2 / 1000, 1e-6);
        rows.relative(
                EXAMPLE, "its deflection under 30 kN", "mm", answer("B2", "deflection"), 1000 * 30_000 / b2, 1e-6);
        LeafPack clamped = new LeafPack(
                pack(7, 2, 1.1, 65, 9, 210).leaves(),
                length(1.1),
                2,
                length(0.08),
                Optional.empty(),
                Measure.of(210e9, QuantityKind.PRESSURE));
        double k1 = LeafRate.of(SpringKind.HALF_ELLIPTIC, clamped);
        rows.relative(
                EXERCISE,
                "deflection under 6 kN, two of seven full-length, 80 mm clamped",
                "mm",
                answer("K1", "deflection"),
                1000 * 6000 / k1,
                1e-6);
        addStresses(rows, eight);
        return rows.list();
    }

    /** Stress at the thickness that an example asks for is the stress that it allows; nipped leaves bear alike, as graduated ones do. */
    private static void addStresses(Rows rows, LeafPack eight) {
        double mega = 1e6;
        rows.relative(
                HANDBOOK,
                "stress, half-elliptic under 4 kN",
                "MPa",
                answer("T1", "stress_at_4kN_central"),
                LeafStress.of(SpringKind.HALF_ELLIPTIC, eight, 4000) / mega,
                1e-6);
        LeafPack exercise = pack(7, 2, 1.02, 65, answer("K1", "required_t"), 210);
        rows.relative(
                EXERCISE,
                "stress of full-length leaves under 6 kN, two of seven, without nip, at the thickness asked for",
                "MPa",
                TABLE.value("K1", "required_t", "stress_MPa"),
                LeafStress.of(SpringKind.HALF_ELLIPTIC, exercise, 6000) / mega,
                1e-6);
        double t = answer("B1", "required_t");
        rows.relative(
                Source.book("machine design textbook, example 10.24 (seen; Bhandari, from memory)"),
                "stress of eighteen nipped leaves under 75 kN at the thickness asked for",
                "MPa",
                TABLE.value("B1", "required_t", "stress_MPa"),
                LeafStress.of(SpringKind.HALF_ELLIPTIC, pack(18, 0, 1, 9 * t, t, 207), 75_000) / mega,
                1e-6);
    }

    private static double answer(String id, String quantity) {
        return TABLE.value(id, quantity, "answer");
    }

    private static void addRate(
            Rows rows, Source source, String name, String quantity, SpringKind kind, LeafPack pack) {
        rows.relative(source, "rate, " + name, "N/mm", answer("T1", quantity), LeafRate.of(kind, pack) / 1000, 1e-6);
    }

    /** Lengths in m, width and thickness in mm, modulus in GPa. */
    private static LeafPack pack(int number, int full, double length, double width, double thickness, double modulus) {
        return new LeafPack(
                List.of(new Leaves(number, length(width / 1000), length(thickness / 1000))),
                length(length),
                full,
                length(0),
                Optional.empty(),
                Measure.of(modulus * 1e9, QuantityKind.PRESSURE));
    }

    private static Measure length(double metres) {
        return Measure.of(metres, QuantityKind.LENGTH);
    }
}
