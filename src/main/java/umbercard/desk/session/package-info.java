/** What lies on the desk: the study with its history, which thumbnail is shown, the photograph. No window here. */
@NullMarked
package umbercard.desk.session;

import org.jspecify.annotations.NullMarked;
