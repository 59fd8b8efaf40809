package umbercard.notes.turned;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import umbercard.color.MunsellValue;
import umbercard.model.ColorNote;
import umbercard.model.ColorNote.Touch;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.notes.AtHand;
import umbercard.notes.ByHue;
import umbercard.notes.Purposes;
import umbercard.notes.ZoneNotes;
import umbercard.words.Message;
import umbercard.zones.ZoneMap;

/**
 * Which hues of the sky could return in the ground: sky hues repeated there tie the two together (common practice, no source).
 */
public final class Echoes {
    /** How far a stick's value may lie from that of the zone it is to return in, in steps: common practice, no source. */
    private static final double REACH = 1;

    private final Study study;
    private final List<Zone> ground;

    private Echoes(Study study, List<Zone> ground) {
        this.study = study;
        this.ground = ground;
    }

    /** A stick in a zone of the ground. */
    private record Place(Stick stick, Zone zone, double off) {}

    /**
     * For each stick of the sky that has a hue not yet echoed one offer: of that stick and the others within 30° of its hue,
     * set out or else in the box, the one that comes nearest in value to a zone of the ground, by the zone's target value or
     * else its notes' mean, and at most a step off. Remarks name those that return already and those that find no place. Zones
     * that have no area on the thumbnail are no place where the thumbnail has any.
     */
    public static Offers of(Study study, Thumbnail thumbnail, ZoneMap zones) {
        List<Zone> ground = study.zones().stream()
                .filter(EchoedHues::isGround)
                .filter(zone -> thumbnail.zoneAreas().isEmpty()
                        || zones.of(zone.id())
                                .filter(place -> !place.seen().isEmpty())
                                .isPresent())
                .toList();
        List<Stick> sky = EchoedHues.ofSky(study);
        return sky.isEmpty() ? Offers.none(Message.of("turned.echo.no-hue")) : new Echoes(study, ground).of(sky);
    }

    private Offers of(List<Stick> sky) {
        List<Offer> offers = new ArrayList<>();
        List<Message> remarks = new ArrayList<>();
        List<String> ids = study.newIds("n", sky.size());
        for (int i = 0; i < sky.size(); i++) {
            Stick stick = sky.get(i);
            String id = ids.get(i);
            Optional<ColorNote> echo = EchoedHues.ofGround(study).stream()
                    .filter(note -> EchoedHues.isEcho(stick, note.stick(), EchoedHues.WITHIN))
                    .findFirst();
            if (echo.isPresent()) {
                remarks.add(Message.of(
                        "turned.echo.returns", stick.title(), echo.get().stick().title(), zoneName(echo.get())));
                continue;
            }
            place(stick)
                    .ifPresentOrElse(
                            place -> offers.add(new Offer(note(id, place), reason(stick, place))),
                            () -> remarks.add(
                                    Message.of("turned.echo.no-place", stick.title(), MunsellValue.of(stick.color()))));
        }
        return new Offers(offers, remarks);
    }

    private String zoneName(ColorNote note) {
        return note.zone().flatMap(study::zone).map(Zone::name).orElse("");
    }

    private Optional<Place> place(Stick sky) {
        return best(Stream.concat(Stream.of(sky), AtHand.of(study.setOut()).sticks().stream()), sky)
                .or(() -> best(ByHue.inBox(study).stream(), sky));
    }

    private Optional<Place> best(Stream<Stick> sticks, Stick sky) {
        return sticks.filter(stick -> EchoedHues.isEcho(sky, stick, EchoedHues.WITHIN))
                .flatMap(stick -> ground.stream().flatMap(zone -> place(stick, zone).stream()))
                .filter(place -> place.off() <= REACH)
                .min(Comparator.comparingDouble(Place::off));
    }

    private Optional<Place> place(Stick stick, Zone zone) {
        OptionalDouble target = zone.targetValue();
        OptionalDouble aim =
                target.isPresent() ? target : ZoneNotes.of(study, zone).mean();
        return aim.isPresent()
                ? Optional.of(new Place(stick, zone, Math.abs(stick.color().value() - aim.getAsDouble())))
                : Optional.empty();
    }

    private static ColorNote note(String id, Place place) {
        return ColorNote.of(id, place.stick())
                .withZone(Optional.of(place.zone().id()))
                .withPurpose(Purposes.usual(place.zone(), false))
                .withTouch(Touch.LIGHT);
    }

    private static Message reason(Stick sky, Place place) {
        MunsellValue value = MunsellValue.of(place.stick().color());
        String zone = place.zone().name();
        return place.stick().id().equals(sky.id())
                ? Message.of("turned.echo.same", sky.title(), zone, value)
                : Message.of("turned.echo.like", place.stick().title(), sky.title(), zone, value);
    }
}
