package umbercard.desk.ledger;

import java.util.Optional;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.picture.Picture;
import umbercard.readings.Wishes;

/**
 * What the readings are asked.
 *
 * @param photograph the study's, whole, once it is decoded
 */
record Question(Study study, Thumbnail thumbnail, Wishes wishes, Optional<Picture> photograph) {}
