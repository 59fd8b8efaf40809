/** What is read from a photograph of the painter's tray, or of a color card on which sticks were rubbed. */
@NullMarked
package umbercard.desk.photographed;

import org.jspecify.annotations.NullMarked;
