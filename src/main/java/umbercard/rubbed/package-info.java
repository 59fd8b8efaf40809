/** The true colors of sticks, learned from a photograph of the printed color card on which they were rubbed. */
@NullMarked
package umbercard.rubbed;

import org.jspecify.annotations.NullMarked;
