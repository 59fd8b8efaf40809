package umbercard.desk.notes;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import umbercard.desk.box.ZoneQuestions;
import umbercard.model.Box;
import umbercard.model.Keyed;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.notan.Fold;
import umbercard.notes.AtHand;
import umbercard.notes.ColoredZone;
import umbercard.notes.Trust;
import umbercard.notes.turned.Echoes;
import umbercard.notes.turned.FromMatches;
import umbercard.notes.turned.Offers;
import umbercard.notes.turned.PartedPlanes;
import umbercard.notes.turned.TurnedSky;
import umbercard.photo.FramedZones;
import umbercard.picture.Picture;
import umbercard.words.Message;
import umbercard.words.Words;
import umbercard.zones.ZoneMap;

/** What strips can be looked for. */
enum OfferKind implements Keyed {
    MATCHES {
        @Override
        Offers find(Asked asked, ZoneMap zones) {
            Study study = asked.study();
            List<Stick> sticks =
                    study.setOut().isEmpty() ? study.box().map(Box::sticks).orElse(List.of()) : study.setOut();
            AtHand atHand = AtHand.of(sticks);
            List<ColoredZone> colored = ZoneQuestions.colored(new FramedZones(), asked.areas());
            return atHand.isEmpty() || colored.isEmpty()
                    ? Offers.none(Message.of("notes.offers.matches.lacks"))
                    : FromMatches.of(
                            study,
                            asked.thumbnail(),
                            zones,
                            Fold.of(asked.thumbnail(), study.ratio()),
                            colored,
                            atHand,
                            Trust.VALUE_FIRST,
                            OptionalInt.empty());
        }
    },
    TURN_SKY {
        @Override
        Offers find(Asked asked, ZoneMap zones) {
            return TurnedSky.of(asked.study(), asked.thumbnail(), zones);
        }
    },
    ECHO {
        @Override
        Offers find(Asked asked, ZoneMap zones) {
            return Echoes.of(asked.study(), asked.thumbnail(), zones);
        }
    },
    PART {
        @Override
        Offers find(Asked asked, ZoneMap zones) {
            return PartedPlanes.of(asked.study(), zones);
        }
    };

    /** Of what study and thumbnail, with the photograph at hand if there is one. */
    record Asked(Study study, Thumbnail thumbnail, Optional<Picture> photograph) {
        private Map<Zone, FramedZones.Asked> areas() {
            return photograph
                    .map(whole -> FramedZones.in(thumbnail, study, whole))
                    .orElse(Map.of());
        }
    }

    /** Looks for them; not on the event thread. */
    Offers find(Asked asked) {
        return find(asked, ZoneMap.of(asked.study(), asked.thumbnail()));
    }

    abstract Offers find(Asked asked, ZoneMap zones);

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
