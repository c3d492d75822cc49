/** How a vehicle stands under each of its loads: what wheels and springs carry, how far springs give, how the body lies. */
package org.ridewright.standing;
