/**
 * What could be tried where a reading says to look again, and what the readings would become. Plug-ins behind
 * {@link umbercard.door.Remedy}. May use the door and what it stands on, and the readings, whose limits a remedy has to meet and
 * which say what it comes to; nothing of the desk, so that it works without a screen.
 */
@NullMarked
package umbercard.remedies;

import org.jspecify.annotations.NullMarked;
