/** Photographs: decoding, orientation, framing, squinting, and the first pass that traces big shapes. May use model, picture, geometry, color, words and kernel. */
@NullMarked
package umbercard.photo;

import org.jspecify.annotations.NullMarked;
