/**
 * Advances equations of motion in time; sees equations and heights, never a vehicle or a road.
 *
 * <p>Invariants, to which tests refer by number ({@code InvariantsTest}, {@code LawScan}):
 *
 * <ol>
 *   <li>A regime is which piece each law is on. Inside one regime the motion is analytic.
 *   <li>Each guard is positive, but for round-off, from the beginning of a step to its end.
 *   <li>Coordinates and their speeds are continuous across every switch; the friction state is, to round-off.
 *   <li>A step ends at the first of: a joint of a height, a guard's crossing, the end of the run, the radius in which the series has
 *       converged.
 *   <li>Read-offs at a joint or switch are right-hand limits.
 *   <li>The same equations and heights give the same bits.
 * </ol>
 *
 * <table>
 * <caption>Symbols</caption>
 * <tr><th>symbol</th><th>meaning</th><th>unit</th></tr>
 * <tr><td>τ</td><td>time from the step's beginning over the step h, 0 to 1</td><td>1</td></tr>
 * <tr><td>x_k</td><td>coefficient of τ^k of quantity x</td><td>that of x</td></tr>
 * <tr><td>w_i</td><td>−M⁻¹ B_iᵀ, acceleration for unit force of element i</td><td>1/kg and like</td></tr>
 * </table>
 */
package org.ridewright.solver;
