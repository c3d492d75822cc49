/**
 * A vehicle's uncertain values found from what was measured on it.
 *
 * <p>Each unknown is {@code x(z)} by its {@link org.ridewright.quantity.Spread}, with {@code z ~ N(0, 1)} before anything was measured. A datum is
 * {@code y_i = f_i(z) + σ_i ε_i}, {@code ε_i ~ N(0, 1)}. The estimate is the most probable {@code z}, the least
 *
 * <pre>    Q(z) = Σ_i ((f_i(z) − y_i)/σ_i)² + Σ_j z_j²                                              (1)</pre>
 *
 * and its covariance {@code C = (JᵀJ + I)⁻¹}, {@code J_ij = ∂f_i/∂z_j / σ_i}. For a straight model Q at its least is χ² with as many degrees
 * of freedom as there are data.
 *
 * <p>Values that are uncertain but not sought stay where they are; what one tolerance of each does to the data, {@code H}, counts as errors that the data
 * have in common, of covariance {@code R = I + H Hᵀ} in units of σ, and the sum in (1) is taken over {@code L⁻¹(f − y)/σ} with {@code L Lᵀ = R}.
 *
 * <p>Source: Tarantola, Inverse Problem Theory (2005), 3.2 and 3.4 (from memory); Hipparchus gives Levenberg–Marquardt and CMA-ES.
 *
 * <table><caption>Symbols</caption>
 * <tr><th>symbol</th><th>shape</th><th>meaning</th></tr>
 * <tr><td>z</td><td>n</td><td>unknowns in standard deviations of what was known before (1)</td></tr>
 * <tr><td>y, f, σ</td><td>m</td><td>observed, predicted, standard uncertainty (unit of the datum)</td></tr>
 * <tr><td>J</td><td>m × n</td><td>Jacobian in units of σ (1)</td></tr>
 * <tr><td>C</td><td>n × n</td><td>covariance of z after the fit (1)</td></tr>
 * </table>
 */
package org.ridewright.calibration;
