package umbercard.desk.notes;

import java.util.List;
import java.util.Optional;
import umbercard.model.Keyed;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.notes.turned.Offers;
import umbercard.picture.Picture;
import umbercard.words.Words;

/** What strips can be looked for. */
enum OfferKind implements Keyed {
    MATCHES,
    TURN_SKY,
    ECHO,
    PART;

    /** Of what study and thumbnail, with the photograph at hand if there is one. */
    record Asked(Study study, Thumbnail thumbnail, Optional<Picture> photograph) {}

    /** Looks for them; not on the event thread. */
    Offers find(Asked asked) {
        return new Offers(List.of(), List.of());
    }

    String title() {
        return Words.say("notes.offers." + key() + ".title");
    }

    /** What the painter is asked, where strips were found. */
    String summary() {
        return Words.say("notes.offers." + key());
    }

    String nothing() {
        return Words.say("notes.offers." + key() + ".nothing");
    }
}
