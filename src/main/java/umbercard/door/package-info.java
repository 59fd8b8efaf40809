/**
 * The doors: what a plug-in implements, and what passes through. Each interface has one to three methods of its own. May use
 * model, geometry, color, picture, notan and words.
 */
@NullMarked
package umbercard.door;

import org.jspecify.annotations.NullMarked;
