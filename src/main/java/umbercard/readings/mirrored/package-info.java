/** Readings of what the notes of the sky become elsewhere: in the water and in the ground. */
@NullMarked
package umbercard.readings.mirrored;

import org.jspecify.annotations.NullMarked;
