/** The box of sticks: laid out to pick from, to set out, to be put right. */
@NullMarked
package umbercard.desk.box;

import org.jspecify.annotations.NullMarked;
