/**
 * What dry friction between the leaves of springs does: load–deflection loops, ring-downs, forced response, and what more or less of it
 * makes of a ride.
 *
 * <p>Friction is varied by a factor on its limit S at every load; the rate at which a spring gives before its leaves slide stays. Factor 0
 * is a spring of leaves without friction.
 *
 * <table>
 * <caption>Symbols</caption>
 * <tr><th>symbol</th><th>unit</th><th>meaning</th></tr>
 * <tr><td>X</td><td>m</td><td>amplitude of a spring's travel about its place of rest</td></tr>
 * <tr><td>S</td><td>N</td><td>limit of the friction at rest, half the height of a wide loop</td></tr>
 * <tr><td>k_p</td><td>N/m</td><td>rate that friction adds until the leaves slide</td></tr>
 * <tr><td>k_eq, h</td><td>N/m</td><td>rate and loss of the linear element that stands for friction at one amplitude</td></tr>
 * </table>
 */
package org.ridewright.friction;
