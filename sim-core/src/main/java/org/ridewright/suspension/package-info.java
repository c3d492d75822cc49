/**
 * Force laws of springs, dampers, friction, seats and contacts, piecewise analytic in compression c, its rate ċ and the friction
 * state s.
 *
 * <table>
 * <caption>Symbols</caption>
 * <tr><th>symbol</th><th>meaning</th><th>unit</th></tr>
 * <tr><td>c</td><td>compression from the free state, positive when shorter</td><td>m (rad)</td></tr>
 * <tr><td>f</td><td>force, positive in compression</td><td>N (N·m)</td></tr>
 * <tr><td>f_e</td><td>elastic part of f</td><td>N (N·m)</td></tr>
 * <tr><td>s, S</td><td>friction force and its limit</td><td>N (N·m)</td></tr>
 * <tr><td>k, k_p</td><td>rate, rate added by locked friction</td><td>N/m (N·m/rad)</td></tr>
 * <tr><td>d</td><td>viscous damping</td><td>N·s/m (N·m·s/rad)</td></tr>
 * <tr><td>μ, F_0</td><td>friction limit proportional to load, and constant</td><td>1, N (N·m)</td></tr>
 * </table>
 */
package org.ridewright.suspension;
