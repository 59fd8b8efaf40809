/** A photograph's pixels and its light and dark as plain values, without a toolkit. May use geometry and color. */
@NullMarked
package umbercard.picture;

import org.jspecify.annotations.NullMarked;
