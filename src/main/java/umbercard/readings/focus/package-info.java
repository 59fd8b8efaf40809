/** Readings of where the eye is led. */
@NullMarked
package umbercard.readings.focus;

import org.jspecify.annotations.NullMarked;
