/** The readings, live. */
@NullMarked
package umbercard.desk.ledger;

import org.jspecify.annotations.NullMarked;
