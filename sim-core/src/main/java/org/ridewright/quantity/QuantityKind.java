package org.ridewright.quantity;

/** What a value measures. Values are held in the SI unit named here. */
public enum QuantityKind {
    LENGTH("length", "m"),
    AREA("area", "m²"),
    VOLUME("volume", "m³"),
    MASS("mass", "kg"),
    TIME("time", "s"),
    SPEED("speed", "m/s"),
    ACCELERATION("acceleration", "m/s²"),
    FREQUENCY("frequency", "Hz"),
    WAVENUMBER("wavenumber", "cycle/m"),
    ANGLE("angle", "rad"),
    FORCE("force", "N"),
    TORQUE("torque", "N·m"),
    PRESSURE("pressure", "Pa"),
    RATE("rate", "N/m"),
    ROLL_RATE("rotational rate", "N·m/rad"),
    DAMPING("damping", "N·s/m"),
    ROLL_DAMPING("rotational damping", "N·m·s/rad"),
    INERTIA("moment of inertia", "kg·m²"),
    RATIO("ratio", "1");

    private final String label;
    private final String siUnit;

    QuantityKind(String label, String siUnit) {
        this.label = label;
        this.siUnit = siUnit;
    }

    /** Name in running text. */
    public String label() {
        return label;
    }

    /** Symbol of the SI unit in which values are held. */
    public String siUnit() {
        return siUnit;
    }
}
