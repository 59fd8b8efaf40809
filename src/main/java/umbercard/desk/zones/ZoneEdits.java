package umbercard.desk.zones;

import java.util.List;
import java.util.function.UnaryOperator;
import umbercard.door.Edit;
import umbercard.model.LostEdge;
import umbercard.model.Study;
import umbercard.model.Zone;
import umbercard.model.edit.Zones;
import umbercard.words.Message;
import umbercard.zones.Proposal;

/** Edits of zones, by name. */
final class ZoneEdits {
    private ZoneEdits() {}

    /** Changes one choice: {@code name}, {@code plane}, {@code distance} or {@code target}. */
    static Edit change(Zone zone, String choice, UnaryOperator<Zone> change) {
        return new Edit(Message.of("zones.edit." + choice, zone.name()), Zones.change(zone.id(), change));
    }

    static Edit remove(Zone zone) {
        return new Edit(Message.of("zones.edit.remove", zone.name()), Zones.remove(zone.id()));
    }

    static Edit clear(String thumbnail, Zone zone) {
        return new Edit(Message.of("zones.edit.clear", zone.name()), Zones.area(thumbnail, zone.id(), List.of()));
    }

    static Edit lose(LostEdge edge, boolean lost) {
        return new Edit(Message.of(lost ? "zones.edit.lose" : "zones.edit.find"), Zones.lose(edge, lost));
    }

    static Edit add(String thumbnail, List<Proposal> proposals) {
        UnaryOperator<Study> change = UnaryOperator.identity();
        for (Proposal proposal : proposals) {
            UnaryOperator<Study> before = change;
            UnaryOperator<Study> area =
                    Zones.area(thumbnail, proposal.zone().id(), proposal.area().outlines());
            UnaryOperator<Study> add = Zones.add(proposal.zone());
            change = study -> area.apply(add.apply(before.apply(study)));
        }
        return new Edit(Message.of("zones.edit.propose"), change);
    }
}
