package org.ridewright.solver;

/**
 * The energy books of a run.
 *
 * @param work done by road and hitch on the vehicle (J)
 * @param stored change of stored energy (J)
 * @param dissipatedByElement energy turned to heat in each element (J)
 * @param dissipated sum of these (J)
 * @param residual {@code work − stored − dissipated} (J)
 * @param least floor of the energy that the residual is compared with (J)
 */
public record EnergyBalance(
        double work, double stored, double[] dissipatedByElement, double dissipated, double residual, double least) {
    /** |residual| over the larger of work and dissipation. */
    public double relativeResidual() {
        return Math.abs(residual) / Math.max(least, Math.max(Math.abs(work), dissipated));
    }
}
