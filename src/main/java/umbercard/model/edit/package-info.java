/** Edits as pure functions from study to study, and the history that keeps the states between them. */
@NullMarked
package umbercard.model.edit;

import org.jspecify.annotations.NullMarked;
