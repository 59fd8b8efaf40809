/** Carrying the design to the surface: scales and measures. May use the door and what it stands on. */
@NullMarked
package umbercard.transfer;

import org.jspecify.annotations.NullMarked;
