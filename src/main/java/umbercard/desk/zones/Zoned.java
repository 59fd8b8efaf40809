package umbercard.desk.zones;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import umbercard.kernel.EventThread;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.notan.Design;
import umbercard.notan.Fold;
import umbercard.photo.FramedZones;
import umbercard.picture.MainColor;
import umbercard.picture.Picture;
import umbercard.zones.ZoneMap;
import umbercard.zones.ZonePair;
import umbercard.zones.ZonePlace;

/**
 * What is found of the zones of a thumbnail.
 *
 * @param facts by the zone's id, for those that have an area within the frame
 * @param touching the pairs that touch
 * @param gaps the share of the frame that no zone covers
 */
record Zoned(Map<String, Facts> facts, List<ZonePair> touching, double gaps) {

    /** @param dark whether it is more than half dark on the notan */
    record Facts(double share, boolean dark, List<MainColor> colors) {}

    /**
     * Finds it; slow.
     *
     * @throws IllegalStateException on the event thread
     */
    static Zoned of(Study study, Thumbnail thumbnail, Optional<Picture> photograph, FramedZones framed) {
        EventThread.refuse("looking at zones");
        ZoneMap map = ZoneMap.of(study, thumbnail);
        Design design = Fold.of(thumbnail, study.ratio());
        Map<String, List<MainColor>> colors = framed.colors(thumbnail, study, photograph);
        Map<String, Facts> facts = new LinkedHashMap<>();
        for (ZonePlace place : map.places()) {
            String id = place.zone().id();
            facts.put(id, new Facts(place.share(), place.isDark(design), colors.getOrDefault(id, List.of())));
        }
        return new Zoned(facts, map.touching(), map.gaps().area() / map.ratio());
    }

    Optional<Facts> of(String zone) {
        return Optional.ofNullable(facts.get(zone));
    }
}
