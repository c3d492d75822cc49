package org.ridewright.quantity;

import javax.measure.Unit;
import systems.uom.common.Imperial;
import systems.uom.common.USCustomary;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

/** The library's definitions that others are fractions or multiples of; one is touched only when a text asks for it. */
enum KnownUnit {
    ONE,
    CYCLE,
    PERCENT,
    METRE,
    KILOGRAM,
    SECOND,
    MINUTE,
    HOUR,
    NEWTON,
    PASCAL,
    HERTZ,
    RADIAN,
    LITRE,
    DEGREE,
    INCH,
    FOOT,
    YARD,
    MILE,
    OUNCE,
    POUND,
    LONG_TON,
    POUND_FORCE,
    KILOGRAM_FORCE,
    STANDARD_GRAVITY,
    MILE_PER_HOUR,
    KILOMETRE_PER_HOUR,
    PER_MINUTE,
    POUND_PER_SQUARE_INCH;

    /** Power of the plane angle in it. */
    int angle() {
        return this == RADIAN || this == DEGREE ? 1 : 0;
    }

    /** Power of the cycle in it. */
    int cycles() {
        return this == CYCLE ? 1 : 0;
    }

    Unit<?> unit() {
        return switch (this) {
            case ONE, CYCLE -> AbstractUnit.ONE;
            case PERCENT -> Units.PERCENT;
            case METRE -> Units.METRE;
            case KILOGRAM -> Units.KILOGRAM;
            case SECOND -> Units.SECOND;
            case MINUTE -> Units.MINUTE;
            case HOUR -> Units.HOUR;
            case NEWTON -> Units.NEWTON;
            case PASCAL -> Units.PASCAL;
            case HERTZ -> Units.HERTZ;
            case RADIAN -> Units.RADIAN;
            case LITRE -> Units.LITRE;
            case DEGREE -> USCustomary.DEGREE_ANGLE;
            case INCH -> USCustomary.INCH;
            case FOOT -> USCustomary.FOOT;
            case YARD -> USCustomary.YARD;
            case MILE -> USCustomary.MILE;
            case OUNCE -> Imperial.OUNCE;
            case POUND -> Imperial.POUND;
            case LONG_TON -> Imperial.TON_UK;
            case POUND_FORCE -> Imperial.POUND_FORCE;
            case KILOGRAM_FORCE -> Imperial.KILOGRAM_FORCE;
            case STANDARD_GRAVITY -> Imperial.STANDARD_GRAVITY;
            case MILE_PER_HOUR -> USCustomary.MILE_PER_HOUR;
            case KILOMETRE_PER_HOUR -> Units.KILOMETRE_PER_HOUR;
            case PER_MINUTE -> Units.MINUTE.inverse();
            case POUND_PER_SQUARE_INCH -> Imperial.POUND_FORCE.divide(USCustomary.INCH.pow(2));
        };
    }
}
