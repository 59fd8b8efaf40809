/** Readings of where things stand in the frame. */
@NullMarked
package umbercard.readings.placement;

import org.jspecify.annotations.NullMarked;
