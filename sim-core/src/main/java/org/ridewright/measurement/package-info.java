/**
 * Accelerations that were recorded on the road, made ready for the metrics of comfort: cut at dropouts, brought to even instants, turned
 * upright, gravity taken off.
 *
 * <table>
 * <caption>Symbols</caption>
 * <tr><th>symbol</th><th>shape</th><th>unit</th><th>meaning</th></tr>
 * <tr><td>t_i</td><td>n</td><td>s</td><td>instants as logged, from the first row</td></tr>
 * <tr><td>Δ</td><td>1</td><td>s</td><td>median interval of neighbouring instants</td></tr>
 * <tr><td>f</td><td>1</td><td>Hz</td><td>rate to which uneven samples are brought</td></tr>
 * <tr><td>ḡ</td><td>3</td><td>m/s²</td><td>mean acceleration along the logger's axes: gravity, where it was not removed</td></tr>
 * <tr><td>û</td><td>3</td><td>1</td><td>upward direction in the logger's axes, ḡ/|ḡ|</td></tr>
 * </table>
 */
package org.ridewright.measurement;
