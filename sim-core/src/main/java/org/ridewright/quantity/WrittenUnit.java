package org.ridewright.quantity;

import java.util.Objects;
import javax.measure.IncommensurableException;
import javax.measure.Unit;
import systems.uom.common.Imperial;
import tech.units.indriya.function.Calculus;

/**
 * A unit as read, with the angles and cycles in it counted: to the library both are plain numbers, so that N·m/rad and
 * N·m, or rad/s and Hz, would pass for each other.
 *
 * @param unit the unit proper
 * @param angle power of the plane angle in it
 * @param cycles power of the cycle or revolution in it
 */
record WrittenUnit(Unit<?> unit, int angle, int cycles) {
    WrittenUnit {
        Objects.requireNonNull(unit, "unit");
    }

    WrittenUnit times(WrittenUnit other) {
        return new WrittenUnit(unit.multiply(other.unit), angle + other.angle, cycles + other.cycles);
    }

    WrittenUnit over(WrittenUnit other) {
        return new WrittenUnit(unit.divide(other.unit), angle - other.angle, cycles - other.cycles);
    }

    WrittenUnit power(int n) {
        return new WrittenUnit(unit.pow(n), n * angle, n * cycles);
    }

    /** This unit with each mass replaced by its weight at standard gravity, 9.80665 m/s². */
    WrittenUnit asWeight() {
        return new WrittenUnit(unit.multiply(Imperial.STANDARD_GRAVITY), angle, cycles);
    }

    /** Whether values of {@code kind} can be given in it without further convention. */
    boolean measures(QuantityKind kind) {
        KindForms forms = KindForms.of(kind);
        boolean cyclesFit =
                cycles == 0 || (cycles == 1 && (kind == QuantityKind.FREQUENCY || kind == QuantityKind.WAVENUMBER));
        return cyclesFit && angle == forms.angle() && unit.isCompatible(forms.si());
    }

    /** {@code amount} of this unit in the SI unit of {@code kind}, as exact as the definition of the unit. */
    Number toSi(Number amount, QuantityKind kind) {
        return to(amount, KindForms.of(kind).si());
    }

    /** How many of {@code smaller} make one of this; the two must have one dimension. */
    Number ratioTo(WrittenUnit smaller) {
        return to(1, smaller.unit);
    }

    private Number to(Number amount, Unit<?> target) {
        try {
            return Calculus.currentNumberSystem()
                    .narrow(unit.getConverterToAny(target).convert(amount));
        } catch (IncommensurableException e) {
            throw new IllegalArgumentException(unit + " cannot be given in " + target, e);
        }
    }
}
