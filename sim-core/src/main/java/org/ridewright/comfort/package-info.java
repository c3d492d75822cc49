/**
 * Human response to vibration after ISO 2631-1:1997, BS 6841:1987 and Directive 2002/44/EC, from accelerations alone; knows no
 * vehicle.
 *
 * <table>
 * <caption>Symbols</caption>
 * <tr><th>symbol</th><th>shape</th><th>unit</th><th>meaning</th></tr>
 * <tr><td>a_w(t), a_w</td><td>n, 1</td><td>m/s²</td><td>frequency-weighted acceleration, and its r.m.s. over the window</td></tr>
 * <tr><td>T</td><td>1</td><td>s</td><td>length of the window</td></tr>
 * <tr><td>τ</td><td>1</td><td>s</td><td>integration time of the running r.m.s., 1 s</td></tr>
 * <tr><td>a_w(t0)</td><td>n</td><td>m/s²</td><td>running r.m.s., {∫ from t0−τ to t0 of a_w² dt / τ}^½</td></tr>
 * <tr><td>MTVV</td><td>1</td><td>m/s²</td><td>maximum transient vibration value, the largest a_w(t0)</td></tr>
 * <tr><td>VDV, eVDV</td><td>1</td><td>m/s^1.75</td><td>fourth power vibration dose value {∫ a_w⁴ dt}^¼, and its estimate
 * 1.4 a_w T^¼</td></tr>
 * <tr><td>k</td><td>1</td><td>1 or m/rad</td><td>multiplying factor of a position and axis</td></tr>
 * <tr><td>a_v</td><td>1</td><td>m/s²</td><td>vibration total value, {Σ k² a_w²}^½</td></tr>
 * <tr><td>A(8), t</td><td>1</td><td>m/s², s</td><td>daily exposure k a_w (t/8 h)^½, time of riding a day</td></tr>
 * <tr><td>MSDV_z</td><td>1</td><td>m/s^1.5</td><td>motion sickness dose value {∫ a_wf² dt}^½</td></tr>
 * <tr><td>AM, T</td><td>1</td><td>kg, 1</td><td>apparent mass on a seat, transmissibility</td></tr>
 * </table>
 *
 * <p>For an axis in rotation, rad takes the place of m until k is applied.
 */
package org.ridewright.comfort;
