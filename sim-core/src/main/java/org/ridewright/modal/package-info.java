/**
 * Small motions about the position of rest: natural frequencies and modes, damped modes, frequency response, and the harmonic balance of
 * dry friction.
 *
 * <p>{@code M q̈ + C q̇ + K q = −Σ B_iᵀ (k_i u_i + d_i u̇_i)}, with {@code K = K_g + Σ k_i B_iᵀ B_i}, {@code C = Σ d_i B_iᵀ B_i}.
 *
 * <table>
 * <caption>Symbols, besides those of {@code dynamics} and {@code suspension}</caption>
 * <tr><th>symbol</th><th>meaning</th><th>unit</th></tr>
 * <tr><td>k_i, d_i</td><td>rate and viscous damping of element i about rest</td><td>N/m, N·s/m (N·m/rad, N·m·s/rad)</td></tr>
 * <tr><td>K, C</td><td>stiffness and damping matrix</td><td>N/m, N·s/m and like</td></tr>
 * <tr><td>ω, ζ</td><td>angular frequency, damping ratio</td><td>rad/s, 1</td></tr>
 * <tr><td>φ</td><td>mode shape, {@code φᵀ M φ = 1}</td><td></td></tr>
 * <tr><td>X</td><td>amplitude of a compression</td><td>m (rad)</td></tr>
 * </table>
 */
package org.ridewright.modal;
