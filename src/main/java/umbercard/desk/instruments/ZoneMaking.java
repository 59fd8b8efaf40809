package umbercard.desk.instruments;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import umbercard.door.Bench;
import umbercard.door.Edit;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.geometry.Region;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.model.edit.Zones;
import umbercard.notan.Design;
import umbercard.notan.Fold;
import umbercard.words.Message;
import umbercard.zones.ZoneProposals;

/**
 * Makes areas of zones: of the zone that the painter has chosen ({@link umbercard.door.Bench#settings()}, {@value
 * #CHOSEN}), else of a new one whose plane and distance are guessed. The second button takes the mass under the pointer.
 */
final class ZoneMaking implements Making {
    /** The setting that names the chosen zone by its id. */
    static final String CHOSEN = "zone";

    private final Bench bench;

    ZoneMaking(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Edit edit(Draft made, Outline outline) {
        return edit(made.thumbnail(), List.of(outline), () -> guessed(made.thumbnail(), outline));
    }

    @Override
    public Optional<UnaryOperator<Study>> asIf(Draft made, Outline outline) {
        return Optional.empty();
    }

    @Override
    public Optional<Edit> atOnce(String thumbnail, Point at) {
        Study study = bench.study().get();
        return study.thumbnail(thumbnail)
                .flatMap(shown -> ZoneProposals.mass(study, shown, design(shown), at))
                .map(mass -> edit(thumbnail, mass.area().outlines(), mass::zone));
    }

    private Edit edit(String thumbnail, List<Outline> outlines, Supplier<Zone> fresh) {
        Optional<Zone> chosen = Optional.ofNullable(bench.settings().get(CHOSEN))
                .flatMap(bench.study().get()::zone);
        Zone zone = chosen.orElseGet(fresh);
        UnaryOperator<Study> change = chosen.isPresent() ? UnaryOperator.identity() : Zones.add(zone);
        for (Outline outline : outlines) {
            UnaryOperator<Study> before = change;
            UnaryOperator<Study> draw = Zones.draw(thumbnail, zone.id(), outline);
            change = study -> draw.apply(before.apply(study));
        }
        String key = chosen.isPresent() ? "instrument.zone.outlined" : "instrument.zone.new";
        return new Edit(Message.of(key, zone.name()), change);
    }

    private Zone guessed(String thumbnail, Outline outline) {
        Study study = bench.study().get();
        Thumbnail shown = study.thumbnail(thumbnail).orElseThrow();
        Design design = design(shown);
        Region area = Region.of(outline).intersect(design.frame());
        boolean dark = area.intersect(design.dark()).area() > area.area() / 2;
        return ZoneProposals.guessed(study, shown, area, dark);
    }

    private Design design(Thumbnail thumbnail) {
        return Fold.of(thumbnail, bench.study().get().ratio());
    }
}
