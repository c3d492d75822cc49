package org.ridewright.comfort;

/**
 * Values that daily exposures to whole-body vibration are set beside. A(8) and VDV are alternatives; which of the two counts is for national
 * rules to say.
 */
public enum ExposureThreshold {
    /** From here on the directive asks an employer to act. VDV seen in a secondary source only. */
    DIRECTIVE_ACTION("exposure action value", 0.5, 9.1, "Directive 2002/44/EC, article 3(2)"),
    /** Not to be exceeded on a working day under the directive. */
    DIRECTIVE_LIMIT("exposure limit value", 1.15, 21, "Directive 2002/44/EC, article 3(2)"),
    /** Below this, health effects have not been clearly documented. */
    GUIDANCE_LOWER("lower end of the health guidance caution zone", 0.47, 8.5, "ISO 2631-1:1997 annex B, as quoted"),
    /** Above this, health risks are likely. */
    GUIDANCE_UPPER("upper end of the health guidance caution zone", 0.93, 17, "ISO 2631-1:1997 annex B, as quoted");

    private final String label;
    private final double eightHours;
    private final double dose;
    private final String source;

    ExposureThreshold(String label, double eightHours, double dose, String source) {
        this.label = label;
        this.eightHours = eightHours;
        this.dose = dose;
        this.source = source;
    }

    /** In running text. */
    public String label() {
        return label;
    }

    /** A(8) (m/s²). */
    public double eightHours() {
        return eightHours;
    }

    /** VDV (m/s^1.75). */
    public double dose() {
        return dose;
    }

    /** Where the two values stand. */
    public String source() {
        return source;
    }
}
