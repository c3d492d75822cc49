package org.ridewright.suspension;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ridewright.quantity.Measure;
import org.ridewright.quantity.QuantityKind;
import org.ridewright.vehicle.Damper;
import org.ridewright.vehicle.Damping;
import org.ridewright.vehicle.Elasticity;
import org.ridewright.vehicle.Elasticity.CoilWire;
import org.ridewright.vehicle.Elasticity.GasColumn;
import org.ridewright.vehicle.Elasticity.LeafPack;
import org.ridewright.vehicle.Elasticity.Rate;
import org.ridewright.vehicle.Elasticity.Table;
import org.ridewright.vehicle.Elasticity.TorsionRod;
import org.ridewright.vehicle.Friction;
import org.ridewright.vehicle.Friction.LockedRate;
import org.ridewright.vehicle.Friction.SliderShare;
import org.ridewright.vehicle.SpringKind;

/** Force laws from descriptions; helpers and stops are added by {@link #withStage} and {@link #withStop} once their places are known. */
public final class SpringLaws {
    /** Standard atmosphere (Pa), exact by definition (CGPM 1954). */
    private static final double AMBIENT_PRESSURE = 101_325;

    /** Compression at which a law's first piece above the free state is read (m). */
    private static final double NEXT_TO_FREE = 1e-9;

    /** Locked rate over elastic rate where it was not measured; between 0.5 and 6 of it occur (from memory). */
    private static final double DEFAULT_LOCKED_MULTIPLE = 2;
    /** How near that comes to unyielding friction is told by docs/validation.md, problems 8 and 9. */
    private static final double RIGID_LOCKED_MULTIPLE = 1e5;

    /** Turn-over length of a friction damper whose mountings were not measured (m), common practice. */
    private static final double MOUNTING_TURN_OVER = 1e-3;

    private SpringLaws() {}

    /**
     * The elastic law alone. A helical spring of wire d and mean diameter D with n working coils has {@code G d⁴/(8 D³ n)}, a torsion rod of
     * diameter d and length L at the end of an arm a {@code π G d⁴/(32 L a²)}, without bending of the arm; leaves see {@link LeafRate}.
     *
     * <p>Source: handbook formulas (from memory).
     */
    public static ForceLaw elastic(SpringKind kind, Elasticity elasticity) {
        if (elasticity instanceof Rate rate) {
            return ForceLaw.spring(rate.rate().value());
        } else if (elasticity instanceof Table table) {
            double[] c = table.points().stream()
                    .mapToDouble(p -> p.compression().value())
                    .toArray();
            double[] f =
                    table.points().stream().mapToDouble(p -> p.force().value()).toArray();
            return broken(c, f, false);
        } else if (elasticity instanceof LeafPack pack) {
            return ForceLaw.spring(LeafRate.of(kind, pack));
        } else if (elasticity instanceof CoilWire coil) {
            double d = coil.wireDiameter().value();
            double mean = coil.meanDiameter().value();
            return ForceLaw.spring(
                    coil.shearModulus().value() * Math.pow(d, 4) / (8 * Math.pow(mean, 3) * coil.workingCoils()));
        } else if (elasticity instanceof TorsionRod bar) {
            double d = bar.diameter().value();
            double a = bar.arm().value();
            return ForceLaw.spring(Math.PI
                    * bar.shearModulus().value()
                    * Math.pow(d, 4)
                    / (32 * bar.length().value() * a * a));
        } else if (elasticity instanceof GasColumn gas) {
            return gas(gas);
        }
        throw new IllegalArgumentException("no law for " + elasticity);
    }

    /** Air spring: volume and pressure at the stated load, carried back along {@code p Vⁿ} to where gauge pressure vanishes. */
    private static ForceLaw gas(GasColumn gas) {
        double area = gas.area().value();
        double pressure = AMBIENT_PRESSURE + gas.load().value() / area;
        double freeVolume = gas.volume().value() * Math.pow(pressure / AMBIENT_PRESSURE, 1 / gas.exponent());
        GasLaw law = new GasLaw(AMBIENT_PRESSURE * area, freeVolume / area, gas.exponent());
        return new ForceLaw(0, 0, Pieces.NONE, 0, Pieces.NONE, Optional.of(law), FrictionLaw.NONE, false);
    }

    /**
     * Straight lines through points, end slopes continued: the line of the segment at zero, with a change of slope at each point above it
     * that acts above and one at each point below it that acts below.
     */
    private static ForceLaw broken(double[] x, double[] f, boolean inSpeed) {
        int segments = x.length - 1;
        int atZero = 0;
        while (atZero < segments - 1 && x[atZero + 1] <= 0) {
            atZero++;
        }
        double base = slope(x, f, atZero);
        List<Pieces.Piece> pieces = new ArrayList<>();
        for (int i = atZero + 1; i < segments; i++) {
            addChange(pieces, slope(x, f, i) - slope(x, f, i - 1), x[i], 1);
        }
        for (int i = atZero; i > 0; i--) {
            addChange(pieces, slope(x, f, i - 1) - slope(x, f, i), x[i], -1);
        }
        double offset = f[atZero] - base * x[atZero];
        return inSpeed
                ? ForceLaw.damper(base).withSpeedStages(Pieces.of(pieces))
                : new ForceLaw(
                        offset, base, Pieces.of(pieces), 0, Pieces.NONE, Optional.empty(), FrictionLaw.NONE, false);
    }

    private static double slope(double[] x, double[] f, int segment) {
        return (f[segment + 1] - f[segment]) / (x[segment + 1] - x[segment]);
    }

    private static void addChange(List<Pieces.Piece> pieces, double change, double at, int side) {
        if (change != 0) {
            pieces.add(new Pieces.Piece(change, at, side));
        }
    }

    /** A damper's table: it gives no force at rest, so the point (0, 0) is put in where none is at zero speed. */
    private static ForceLaw damperTable(List<Damper.Law.Point> points) {
        List<double[]> all = new ArrayList<>();
        boolean passed = false;
        for (Damper.Law.Point point : points) {
            double v = point.speed().value();
            if (!passed && v >= 0) {
                passed = true;
                if (v > 0) {
                    all.add(new double[] {0, 0});
                } else if (point.force().value() != 0) {
                    throw new IllegalArgumentException("a damper gives no force at rest, but its table says "
                            + point.force().value() + " N at 0 m/s; give dry friction under 'friction'");
                }
            }
            all.add(new double[] {v, point.force().value()});
        }
        if (!passed) {
            all.add(new double[] {0, 0});
        }
        return broken(
                all.stream().mapToDouble(p -> p[0]).toArray(),
                all.stream().mapToDouble(p -> p[1]).toArray(),
                true);
    }

    /** The law with viscous damping; only coefficients apply here. */
    public static ForceLaw withDamping(ForceLaw law, Damping damping) {
        return damping instanceof Damping.Coefficient d
                ? law.withDamping(d.value().value())
                : law;
    }

    /**
     * The law with dry friction; the locked rate, where not given, is a multiple of {@code f_e'} just above the free state, or of an
     * enclosed gas at its stated load.
     *
     * @param elasticity from which the law was made
     * @throws IllegalArgumentException if {@code k_p ≤ μ f_l'} on some piece
     */
    public static ForceLaw withFriction(ForceLaw law, Elasticity elasticity, Friction friction) {
        return withFriction(law, workingRate(law, elasticity), friction);
    }

    /** The same for a law whose rate at work is told. */
    public static ForceLaw withFriction(ForceLaw law, double elasticRate, Friction friction) {
        if (!friction.present()) {
            return law;
        }
        double mu = friction.shareOfLoad().value();
        double constant = friction.constant().value();
        if (friction.envelopeLength().isPresent()) {
            return law.withFriction(FrictionLaw.envelope(
                    mu, constant, friction.envelopeLength().get().value()));
        }
        double lockedRate = lockedRate(friction.lockedRate(), elasticRate);
        double steepest = Math.max(elasticRate, law.greatestLeafRate());
        if (!(lockedRate > mu * steepest)) {
            throw new IllegalArgumentException("locked rate " + lockedRate
                    + " N/m must exceed the friction share times the rate, " + mu * steepest + " N/m");
        }
        List<SliderShare> shares = friction.sliders().isEmpty() ? List.of(new SliderShare(1, 1)) : friction.sliders();
        return law.withFriction(new FrictionLaw(
                mu,
                constant,
                shares.stream().mapToDouble(SliderShare::ofLimit).toArray(),
                shares.stream().mapToDouble(s -> s.ofLockedRate() * lockedRate).toArray(),
                0));
    }

    /** Locked rate over elastic rate where it was not measured; between 0.5 and 6 of it occur (from memory). */
    public static Measure defaultLockedMultiple() {
        return Measure.estimated(
                DEFAULT_LOCKED_MULTIPLE,
                QuantityKind.RATIO,
                "friction adds twice the elastic rate until the leaves slide (common practice)");
    }

    /** Locked rate of a friction damper whose mountings were not measured: its friction is reached after 1 mm (N/m). */
    public static Measure defaultLockedRate(Damper damper) {
        return Measure.estimated(
                damper.friction().value() / MOUNTING_TURN_OVER,
                QuantityKind.RATE,
                "the damper's friction is reached after 1 mm (common practice)");
    }

    /**
     * Rate of a spring as its law has it: just above the free state, or of an enclosed gas at its stated load (N/m).
     */
    public static double workingRate(SpringKind kind, Elasticity elasticity) {
        return workingRate(elastic(kind, elasticity), elasticity);
    }

    private static double workingRate(ForceLaw law, Elasticity elasticity) {
        if (elasticity instanceof GasColumn gas && law.gas().isPresent()) {
            return law.elasticRate(
                    law.gas().get().length() - gas.volume().value() / gas.area().value());
        }
        return law.elasticRate(NEXT_TO_FREE);
    }

    private static double lockedRate(LockedRate locked, double elasticRate) {
        if (locked instanceof LockedRate.Given given) {
            return given.rate().value();
        } else if (locked instanceof LockedRate.MultipleOfRate multiple) {
            return multiple.multiple().value() * elasticRate;
        } else if (locked instanceof LockedRate.Rigid) {
            return RIGID_LOCKED_MULTIPLE * elasticRate;
        }
        return DEFAULT_LOCKED_MULTIPLE * elasticRate;
    }

    /** The law with one more gapped stage of the leaves, a helper: above its place with side +1, below with −1. */
    public static ForceLaw withStage(ForceLaw law, double rate, double at, int side) {
        return law.withStages(law.stages().plus(new Pieces.Piece(rate, at, side)));
    }

    /** The law with one more stop: above its place with side +1, below with −1. */
    public static ForceLaw withStop(ForceLaw law, double rate, double at, int side) {
        return law.withStops(law.stops().plus(new Pieces.Piece(rate, at, side)));
    }

    /** The law of a damper. */
    public static ForceLaw damper(Damper damper) {
        ForceLaw law = ForceLaw.spring(0);
        if (damper.law().isPresent()) {
            Damper.Law force = damper.law().get();
            if (force instanceof Damper.Law.Rates rates) {
                law = bilinear(rates.bump().value(), rates.rebound().value());
            } else if (force instanceof Damper.Law.Table table) {
                law = damperTable(table.points());
            }
        }
        double friction = damper.friction().value();
        double locked =
                damper.lockedRate().orElseGet(() -> defaultLockedRate(damper)).value();
        return law.withFriction(FrictionLaw.single(0, friction, locked));
    }

    /** {@code f = bump·ċ} for ċ > 0, {@code rebound·ċ} for ċ < 0. */
    public static ForceLaw bilinear(double bump, double rebound) {
        ForceLaw law = ForceLaw.damper(rebound);
        return bump == rebound
                ? law
                : law.withSpeedStages(Pieces.of(Arrays.asList(new Pieces.Piece(bump - rebound, 0, 1))));
    }
}
