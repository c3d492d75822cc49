package org.ridewright.quantity;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.Unit;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

/**
 * How values of one kind are written.
 *
 * @param kind the kind
 * @param angle power of the plane angle in its unit
 * @param weightForMass whether a unit of mass in it stands for that mass's weight
 * @param units the usual units, the commonest first; products and quotients of other known units are read as well
 * @param examples whole values, the plainest first
 */
record KindForms(QuantityKind kind, int angle, boolean weightForMass, List<String> units, List<String> examples) {
    private static final Map<QuantityKind, KindForms> BY_KIND = byKind();

    KindForms {
        units = List.copyOf(units);
        examples = List.copyOf(examples);
    }

    static KindForms of(QuantityKind kind) {
        return BY_KIND.get(kind);
    }

    /** The kind whose values {@code unit} measures, the weight convention apart; empty where there is none. */
    static Optional<QuantityKind> describing(WrittenUnit unit) {
        return Arrays.stream(QuantityKind.values()).filter(unit::measures).findFirst();
    }

    /** The SI unit in which values are held; the radian counts as 1. */
    Unit<?> si() {
        return switch (kind) {
            case LENGTH -> Units.METRE;
            case AREA -> Units.SQUARE_METRE;
            case VOLUME -> Units.CUBIC_METRE;
            case MASS -> Units.KILOGRAM;
            case TIME -> Units.SECOND;
            case SPEED -> Units.METRE_PER_SECOND;
            case ACCELERATION -> Units.METRE_PER_SQUARE_SECOND;
            case FREQUENCY -> Units.HERTZ;
            case WAVENUMBER -> AbstractUnit.ONE.divide(Units.METRE);
            case ANGLE, RATIO -> AbstractUnit.ONE;
            case FORCE -> Units.NEWTON;
            case TORQUE, ROLL_RATE -> Units.NEWTON.multiply(Units.METRE);
            case PRESSURE -> Units.PASCAL;
            case RATE -> Units.NEWTON.divide(Units.METRE);
            case DAMPING -> Units.NEWTON.multiply(Units.SECOND).divide(Units.METRE);
            case ROLL_DAMPING -> Units.NEWTON.multiply(Units.METRE).multiply(Units.SECOND);
            case INERTIA -> Units.KILOGRAM.multiply(Units.METRE.pow(2));
        };
    }

    private static Map<QuantityKind, KindForms> byKind() {
        Map<QuantityKind, KindForms> table = new EnumMap<>(QuantityKind.class);
        for (QuantityKind kind : QuantityKind.values()) {
            table.put(kind, describe(kind));
        }
        return table;
    }

    private static KindForms describe(QuantityKind kind) {
        return switch (kind) {
            case LENGTH ->
                plain(
                        kind,
                        "mm, m, in, cm, km, ft, yd, mi, thou, µm",
                        "1.12 m, 1120 mm, 44 1/2 in, 3 ft 8 1/2 in, 3' 8\", 1.12 m ± 5 mm (measured)");
            case AREA -> plain(kind, "m², cm², in², mm², ft²", "1.8 m², 32 cm², 5 in², 19 1/2 ft²");
            case VOLUME -> plain(kind, "l, cm³, in³, m³, ml, mm³, ft³", "1.2 l, 350 cm³, 21 in³, 0.002 m³");
            case MASS ->
                plain(
                        kind,
                        "kg, lb, t, g, oz, st, qr, cwt, ton",
                        "410 kg, 904 lb, 12 st 4 lb, 2 cwt 1 qr 14 lb, 1.2 t, 410 kg ± 5 kg (weighed)");
            case TIME -> plain(kind, "s, ms, min, h", "0.4 s, 35 ms, 1 min 30 s, 2 h");
            case SPEED -> plain(kind, "km/h, mph, m/s, ft/s, kph, mm/s, in/s", "60 km/h, 30 mph, 13.4 m/s, 44 ft/s");
            case ACCELERATION -> plain(kind, "m/s², g, ft/s²", "2.5 m/s², 0.3 g, 8 ft/s²");
            case FREQUENCY ->
                plain(kind, "Hz, 1/min, cycles/min, rpm, 1/s, kHz", "1.4 Hz, 84 1/min, 84 cycles/min, 840 rpm");
            case WAVENUMBER ->
                plain(kind, "cycle/m, cycles/m, 1/m, cycle/ft", "0.1 cycle/m, 2.8 cycles/m, 0.03 cycle/ft");
            case ANGLE -> plain(kind, "deg, rad, °, mrad", "2.5 deg, 2.5°, 0.044 rad, 44 mrad");
            case FORCE ->
                weighty(kind, "N, kN, lbf, kgf, tonf, kg, lb", "350 N, 4.2 kN, 80 lbf, 35 kgf, 410 kg, 8 cwt 1 qr");
            case TORQUE -> weighty(kind, "N·m, kN·m, lbf ft, lbf in, kgf m", "120 N·m, 1.2 kN·m, 90 lbf ft, 12 kgf m");
            case PRESSURE ->
                weighty(
                        kind,
                        "bar, kPa, psi, Pa, MPa, GPa, N/mm², lbf/in², kgf/cm²",
                        "2.2 bar, 220 kPa, 32 psi, 206 GPa, 1200 N/mm²");
            case RATE ->
                weighty(
                        kind,
                        "N/mm, kN/m, lbf/in, N/m, kgf/mm, kgf/cm, N/cm, lb/in, kg/mm, kg/cm",
                        "21 N/mm, 21 kN/m, 120 lbf/in, 2.1 kgf/mm, 120 lb/in, 21 ± 2 N/mm (measured)");
            case ROLL_RATE ->
                turning(
                        kind,
                        "N m/deg, kN m/rad, lbf ft/deg, N m/rad, lbf in/deg",
                        "350 N m/deg, 20 kN m/rad, 258 lbf ft/deg, 20000 N·m/rad");
            case DAMPING ->
                weighty(
                        kind,
                        "N·s/m, kN·s/m, lbf s/in, N s/mm, kgf s/cm",
                        "1500 N·s/m, 1.5 kN·s/m, 8.6 lbf s/in, 1.5 N/(mm/s)");
            case ROLL_DAMPING ->
                turning(
                        kind,
                        "N m s/rad, N m s/deg, kN m s/rad, lbf ft s/deg, lbf ft s/rad",
                        "900 N m s/rad, 16 N m s/deg, 12 lbf ft s/deg");
            case INERTIA -> plain(kind, "kg m², lb ft², kg cm², lb in²", "1800 kg m², 42700 lb ft², 250 kg cm²");
            case RATIO -> plain(kind, "%, mm/m", "0.06, 6 %, 7/8, 0.06 ± 10 %");
        };
    }

    private static KindForms plain(QuantityKind kind, String units, String examples) {
        return new KindForms(kind, kind == QuantityKind.ANGLE ? 1 : 0, false, list(units), list(examples));
    }

    private static KindForms weighty(QuantityKind kind, String units, String examples) {
        return new KindForms(kind, 0, true, list(units), list(examples));
    }

    private static KindForms turning(QuantityKind kind, String units, String examples) {
        return new KindForms(kind, -1, true, list(units), list(examples));
    }

    private static List<String> list(String separated) {
        return List.of(separated.split(", ", -1));
    }
}
