/**
 * Uniformly sampled channels, linear filters on them and their spectra; knows neither vehicles nor comfort.
 *
 * <table>
 * <caption>Symbols</caption>
 * <tr><th>symbol</th><th>shape</th><th>unit</th><th>meaning</th></tr>
 * <tr><td>fs, T</td><td>1</td><td>Hz, s</td><td>sampling rate and interval, T = 1/fs</td></tr>
 * <tr><td>s</td><td>1</td><td>rad/s</td><td>Laplace variable, s = 2πi f on the frequency axis</td></tr>
 * <tr><td>b, a</td><td>3</td><td>s^k</td><td>numerator and denominator of a section, power k of s</td></tr>
 * <tr><td>A, B, C, D</td><td>n×n, n, n, 1</td><td>1/s, 1/s, 1, 1</td><td>a cascade as ẋ = A x + B u, y = C x + D u;
 * n is twice the number of sections</td></tr>
 * <tr><td>Φ</td><td>n×n</td><td>1</td><td>e^(A T), the state's own motion over one interval</td></tr>
 * <tr><td>w_j</td><td>n</td><td>1</td><td>share of the sample j places on in the state's change</td></tr>
 * <tr><td>M</td><td>1</td><td>–</td><td>samples used on each side of an interpolated instant</td></tr>
 * <tr><td>φ</td><td>1</td><td>1</td><td>interpolation kernel, of the distance in samples</td></tr>
 * <tr><td>G, Δf</td><td>N/2 + 1, 1</td><td>unit²/Hz, Hz</td><td>one-sided power spectral density, distance of its lines</td></tr>
 * <tr><td>N, K</td><td>1</td><td>–</td><td>samples in a segment of a spectrum, segments averaged</td></tr>
 * <tr><td>ν</td><td>1</td><td>–</td><td>degrees of freedom of an estimated density</td></tr>
 * <tr><td>H1, γ²</td><td>N/2 + 1</td><td>ratio of units, 1</td><td>transfer function, ordinary coherence</td></tr>
 * </table>
 */
package org.ridewright.signal;
