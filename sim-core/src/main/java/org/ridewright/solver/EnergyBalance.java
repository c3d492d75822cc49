package org.ridewright.solver;

/**
 * The energy books of a run, {@code work = stored + dissipated} but for a residual that tells how well it was solved.
 *
 * @param work {@code ∫ f u̇ dt} of every height: what road and hitches did on the vehicle (J)
 * @param stored change, from begin to end, of the energy of motion, of gravity with its stiffness, of elastic laws (of those that only push
 *     while compressed) and of locked sliders, {@code s²/(2 k_p)} (J)
 * @param dissipatedByElement turned to heat in each element, in the order of the equations: by damping, by sliders that slide, and by a
 *     contact that gives up its compression without passing on force. All the work on an envelope counts, which may give a little
 *     of it back just after a turn (J)
 * @param dissipated sum of these (J)
 * @param residual {@code work − stored − dissipated} (J)
 * @param least floor of the energy that the residual is compared with (J)
 */
public record EnergyBalance(
        double work, double stored, double[] dissipatedByElement, double dissipated, double residual, double least) {
    /** |residual| over the largest of |work|, dissipation and {@code least}. */
    public double relativeResidual() {
        return Math.abs(residual) / Math.max(least, Math.max(Math.abs(work), dissipated));
    }
}
