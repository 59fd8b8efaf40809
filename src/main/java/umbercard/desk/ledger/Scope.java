package umbercard.desk.ledger;

import umbercard.model.Keyed;

/** How far a change of a reading's limits reaches. */
enum Scope implements Keyed {
    STUDY,
    EVERY_STUDY
}
