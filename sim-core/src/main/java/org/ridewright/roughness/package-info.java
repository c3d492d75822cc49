/**
 * How rough a road is: from heights at equal spacing alone, whichever way the road was made.
 *
 * <table>
 * <caption>Symbols</caption>
 * <tr><th>symbol</th><th>unit</th><th>meaning</th></tr>
 * <tr><td>Δ</td><td>m</td><td>spacing of the heights</td></tr>
 * <tr><td>y(i)</td><td>m</td><td>height of the road at station i Δ</td></tr>
 * <tr><td>n, n₀</td><td>cycle/m</td><td>wavenumber; 0.1 cycle/m</td></tr>
 * <tr><td>Gd(n)</td><td>m³</td><td>one-sided spectral density of the height, m² per cycle/m</td></tr>
 * <tr><td>w</td><td>1</td><td>waviness, Gd(n) = Gd(n₀) (n/n₀)^−w</td></tr>
 * <tr><td>ν</td><td>1</td><td>degrees of freedom of an estimate</td></tr>
 * <tr><td>s</td><td>1</td><td>slope of the road</td></tr>
 * <tr><td>R, a</td><td>m</td><td>radius of a wheel; half length of a footprint</td></tr>
 * <tr><td>u(i)</td><td>m</td><td>height of the wheel path</td></tr>
 * </table>
 */
package org.ridewright.roughness;
