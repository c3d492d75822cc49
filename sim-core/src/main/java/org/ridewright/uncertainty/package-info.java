/**
 * What the tolerances of the inputs make of a ride test: many vehicles drawn from what is known of one, the ride of each, and the interval
 * that holds nine tenths of the answers.
 *
 * <table>
 * <caption>Symbols</caption>
 * <tr><th>symbol</th><th>shape</th><th>unit</th><th>meaning</th></tr>
 * <tr><td>w</td><td>d</td><td>1</td><td>independent standard normal numbers of one draw</td></tr>
 * <tr><td>N</td><td>1</td><td>1</td><td>number of draws</td></tr>
 * </table>
 */
package org.ridewright.uncertainty;
