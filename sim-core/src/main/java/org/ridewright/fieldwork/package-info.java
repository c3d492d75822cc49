/**
 * What was measured in the yard: the facts of a measurements file, their usual tolerances, and what each of them says directly, without a
 * simulation.
 *
 * <table>
 * <caption>Symbols</caption>
 * <tr><th>symbol</th><th>unit</th><th>meaning</th></tr>
 * <tr><td>m, g</td><td>kg, m/s²</td><td>mass, standard gravity</td></tr>
 * <tr><td>L, h, θ</td><td>m, m, rad</td><td>distance of two axles, rise of one of them, tilt</td></tr>
 * <tr><td>T, n, t</td><td>s, 1, s</td><td>period, number of swings or cycles, the time they took</td></tr>
 * <tr><td>F, δ</td><td>N, m</td><td>load on a spring and its deflection, from where both began</td></tr>
 * <tr><td>k, k_p</td><td>N/m</td><td>rate of a spring while it slides; what friction adds until it does</td></tr>
 * <tr><td>S, μ, F_0</td><td>N, 1, N</td><td>friction {@code S = F_0 + μ f_e}: half the height of the loop, share of load, constant part</td></tr>
 * </table>
 *
 * <p>A tolerance is a standard uncertainty; independent ones are put together by squares.
 */
package org.ridewright.fieldwork;
