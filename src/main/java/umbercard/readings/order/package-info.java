/** Readings of the order of application. */
@NullMarked
package umbercard.readings.order;

import org.jspecify.annotations.NullMarked;
