/** The zones of the study: what they are, where they lie, what the photograph is like in them. */
@NullMarked
package umbercard.desk.zones;

import org.jspecify.annotations.NullMarked;
