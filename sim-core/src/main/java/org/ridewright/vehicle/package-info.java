/** What a vehicle is, as its file says it: immutable records that know no equations. */
package org.ridewright.vehicle;
