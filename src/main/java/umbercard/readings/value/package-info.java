/** Readings of the values of color notes: of zones, planes, and what the box can reach. */
@NullMarked
package umbercard.readings.value;

import org.jspecify.annotations.NullMarked;
