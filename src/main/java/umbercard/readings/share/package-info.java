/** Readings of how much is dark and how much light. */
@NullMarked
package umbercard.readings.share;

import org.jspecify.annotations.NullMarked;
