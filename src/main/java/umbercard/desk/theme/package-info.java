/** Colors, type and spacing of the window. */
@NullMarked
package umbercard.desk.theme;

import org.jspecify.annotations.NullMarked;
