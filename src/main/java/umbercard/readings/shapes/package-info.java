/** Readings of the masses: how many, how large, how alike, and where they nearly meet. */
@NullMarked
package umbercard.readings.shapes;

import org.jspecify.annotations.NullMarked;
