package umbercard.notes.turned;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import umbercard.color.MunsellValue;
import umbercard.model.ColorNote;
import umbercard.model.Stick;
import umbercard.model.Study;
import umbercard.model.Zone;
import umbercard.notes.ByHue;
import umbercard.notes.ZoneNotes;
import umbercard.words.Message;
import umbercard.zones.ZoneMap;
import umbercard.zones.ZonePair;

/**
 * What parts two planes that touch and share a value: darken the near or lighten the far (common practice, no source). They
 * share one where the means of their notes lie under a step apart and their edge is not meant to be lost.
 */
public final class PartedPlanes {
    /** How far apart the values of two planes should lie: common practice, no source. */
    public static final double STEP = 1;

    /** How far past the value needed a stick may lie, in steps: common practice, no source. */
    private static final double REACH = 1;

    private static final double HAIR = 1e-9;
    private static final double WHITE = 10;

    private final Study study;
    private final List<String> ids;
    private final List<Offer> offers = new ArrayList<>();
    private final List<Message> remarks = new ArrayList<>();

    private PartedPlanes(Study study, int most) {
        this.study = study;
        ids = study.newIds("n", most);
    }

    /**
     * For each such pair both remedies, the darker near one first: the stick nearest in hue and chroma to what the zone has
     * last, at the value needed or up to a step past it, of those set out or else of the box. A remedy for which no stick is
     * dark or light enough is a remark. Zones without notes that count part from nothing yet.
     */
    public static Offers of(Study study, ZoneMap zones) {
        List<ZonePair> pairs = zones.touching().stream()
                .filter(pair -> !study.lostEdges().contains(pair.edge()))
                .toList();
        PartedPlanes parted = new PartedPlanes(study, 2 * pairs.size());
        pairs.forEach(parted::part);
        return new Offers(parted.offers, parted.remarks);
    }

    private void part(ZonePair pair) {
        ZoneNotes near = ZoneNotes.of(study, pair.nearer().zone());
        ZoneNotes far = ZoneNotes.of(study, pair.farther().zone());
        OptionalDouble nearMean = near.mean();
        OptionalDouble farMean = far.mean();
        if (nearMean.isEmpty()
                || farMean.isEmpty()
                || Math.abs(nearMean.getAsDouble() - farMean.getAsDouble()) >= STEP - HAIR) {
            return;
        }
        remedy("darken", near, far, farMean.getAsDouble() - STEP, farMean.getAsDouble() - STEP - REACH);
        remedy("lighten", far, near, nearMean.getAsDouble() + STEP, nearMean.getAsDouble() + STEP + REACH);
    }

    private void remedy(String way, ZoneNotes changed, ZoneNotes other, double needed, double furthest) {
        ColorNote last = changed.counting().get(changed.counting().size() - 1);
        double least = Math.min(needed, furthest) - HAIR;
        double most = Math.max(needed, furthest) + HAIR;
        Optional<Stick> stick = ByHue.nearest(
                study,
                last.stick().color(),
                one -> one.color().value() >= least && one.color().value() <= most);
        Zone zone = changed.zone();
        stick.ifPresentOrElse(
                one -> offers.add(new Offer(
                        note(last, one),
                        Message.of(
                                "turned.parted." + way,
                                zone.name(),
                                other.zone().name(),
                                one.title(),
                                MunsellValue.of(one.color())))),
                () -> remarks.add(Message.of(
                        "turned.parted.no-stick." + way,
                        zone.name(),
                        other.zone().name(),
                        new MunsellValue(Math.max(0, Math.min(WHITE, needed))))));
    }

    /** Laid over the zone's last note that counts, in its way. */
    private ColorNote note(ColorNote last, Stick stick) {
        return ColorNote.of(ids.get(offers.size()), stick)
                .withZone(last.zone())
                .withPurpose(last.purpose())
                .withDirection(last.direction())
                .withLayer(last.layer() + 1);
    }
}
