/** The notan card as a canvas. */
@NullMarked
package umbercard.desk.canvas;

import org.jspecify.annotations.NullMarked;
