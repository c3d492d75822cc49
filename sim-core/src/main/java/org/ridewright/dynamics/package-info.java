/**
 * From a description to equations of motion: coordinates, mass matrix, rows, laws, static equilibrium.
 *
 * <p>{@code M q̈ = −g_q − K_g q − Σ_i B_iᵀ f_i(c_i, ċ_i, s_i)} with {@code c_i = B_i q + D_i u}. The origin {@code q = 0} is the free
 * state, in which every spring just touches.
 *
 * <table>
 * <caption>Symbols</caption>
 * <tr><th>symbol</th><th>meaning</th><th>shape</th><th>unit</th></tr>
 * <tr><td>q, v</td><td>coordinates from the free state and their speeds</td><td>n</td><td>m or rad, and per s</td></tr>
 * <tr><td>M</td><td>mass matrix</td><td>n × n</td><td>kg, kg·m, kg·m²</td></tr>
 * <tr><td>K_g, g_q</td><td>gravity stiffness and gravity forces</td><td>n × n, n</td><td>N/m and like</td></tr>
 * <tr><td>B_i</td><td>row of element i</td><td>n</td><td>1 or m</td></tr>
 * <tr><td>D_i u</td><td>height that a wheel path or hitch gives element i</td><td></td><td>m</td></tr>
 * </table>
 */
package org.ridewright.dynamics;
