/** What a person reads after a run: figures of ride tests, the page, the numbers, the traces. No numerics of its own but comparisons. */
package org.ridewright.report;
