/**
 * Bounce tests in recorded accelerations: where a vehicle was let go, how fast it swung, and what made it come to rest.
 *
 * <table>
 * <caption>Symbols</caption>
 * <tr><th>symbol</th><th>unit</th><th>meaning</th></tr>
 * <tr><td>ω, ω_d</td><td>rad/s</td><td>natural frequency, {@code ω√(1 − ζ²)}</td></tr>
 * <tr><td>ζ</td><td>1</td><td>viscous damping ratio</td></tr>
 * <tr><td>f</td><td>m/s²</td><td>dry friction over mass, F/m</td></tr>
 * <tr><td>F/k</td><td>m</td><td>dry friction over spring rate, f/ω²: half the width of the band in which it can come to rest</td></tr>
 * <tr><td>A_j</td><td>m/s²</td><td>acceleration just after turn j</td></tr>
 * <tr><td>q</td><td>1</td><td>k/k_p, softness of the locked slider</td></tr>
 * </table>
 */
package org.ridewright.ringdown;
