/** The order of application: what the rules say of two color notes, and the order that comes of it. */
@NullMarked
package umbercard.notes.order;

import org.jspecify.annotations.NullMarked;
