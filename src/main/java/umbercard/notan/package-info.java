/** The fold of a thumbnail's marks into one dark region. May use model and geometry. */
@NullMarked
package umbercard.notan;

import org.jspecify.annotations.NullMarked;
