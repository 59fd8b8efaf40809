/** Readings of the hues of color notes. */
@NullMarked
package umbercard.readings.hue;

import org.jspecify.annotations.NullMarked;
