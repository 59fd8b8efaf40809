package umbercard.photo;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import umbercard.geometry.Outline;
import umbercard.kernel.EventThread;
import umbercard.model.Frame;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.picture.MainColor;
import umbercard.picture.Picture;
import umbercard.zones.ZoneMap;
import umbercard.zones.ZonePlace;

/**
 * The colors of zones of one photograph in one frame or another, kept as found: asking again for a zone that still lies
 * where it did costs nothing. Keeps the photograph last asked of and the picture framed last. Any thread but the event
 * thread.
 */
public final class FramedZones {
    /** Rows of the framed picture: its colors are the mean of what each pixel covers, so finer ones tell little more. */
    private static final int HEIGHT = 480;

    private static final int MOST = 256;

    private final Map<Asked, Optional<ZoneColors>> known = new LinkedHashMap<>();
    private Optional<Framed> last = Optional.empty();

    /**
     * A zone of a photograph.
     *
     * @param ratio the frame's width divided by its height
     * @param outlines in frame units, filled together by the non-zero rule
     */
    public record Asked(Picture photograph, Frame frame, double ratio, List<Outline> outlines) {
        public Asked {
            outlines = List.copyOf(outlines);
        }

        private boolean framesLike(Asked other) {
            return photograph.equals(other.photograph) && frame.equals(other.frame) && ratio == other.ratio;
        }
    }

    /** What to ask for each zone of which something is seen in a thumbnail, in the order of the study: what no nearer zone
     * covers of it. None without a reference. */
    public static Map<Zone, Asked> in(Thumbnail thumbnail, Study study, Picture photograph) {
        Map<Zone, Asked> asked = new LinkedHashMap<>();
        study.reference().ifPresent(reference -> {
            Frame frame = thumbnail.frame().orElse(reference.frame());
            for (ZonePlace place : ZoneMap.of(study, thumbnail).places()) {
                if (!place.seen().isEmpty()) {
                    List<Outline> area = place.isCovered()
                            ? place.seen().outlines()
                            : thumbnail.zoneAreas().getOrDefault(place.zone().id(), List.of());
                    asked.put(place.zone(), new Asked(photograph, frame, study.ratio(), area));
                }
            }
        });
        return asked;
    }

    /**
     * The main colors of each zone of which something is seen, by its id, the largest share first; none without a photograph.
     *
     * @throws IllegalStateException on the event thread
     */
    public Map<String, List<MainColor>> colors(Thumbnail thumbnail, Study study, Optional<Picture> photograph) {
        Map<String, List<MainColor>> colors = new LinkedHashMap<>();
        photograph.ifPresent(
                whole -> of(in(thumbnail, study, whole)).forEach((zone, found) -> colors.put(zone.id(), found.main())));
        return colors;
    }

    /**
     * The colors of several zones, in their order; those without area within the frame are left out.
     *
     * @throws IllegalStateException on the event thread
     */
    public Map<Zone, ZoneColors> of(Map<Zone, Asked> areas) {
        Map<Zone, ZoneColors> colors = new LinkedHashMap<>();
        areas.forEach((zone, asked) -> of(asked).ifPresent(found -> colors.put(zone, found)));
        return colors;
    }

    private record Framed(Asked asked, Picture picture) {}

    /**
     * The colors of a zone.
     *
     * @return empty where the zone has no area within the frame
     * @throws IllegalStateException on the event thread
     */
    public synchronized Optional<ZoneColors> of(Asked asked) {
        EventThread.refuse("finding the colors of a zone");
        if (last.filter(framed -> framed.asked().photograph().equals(asked.photograph()))
                        .isEmpty()
                || known.size() >= MOST) {
            known.clear();
        }
        return known.computeIfAbsent(asked, this::find);
    }

    private Optional<ZoneColors> find(Asked asked) {
        Framed framed = last.filter(f -> f.asked().framesLike(asked))
                .orElseGet(() ->
                        new Framed(asked, FramedView.of(asked.photograph(), asked.frame(), asked.ratio(), HEIGHT)));
        last = Optional.of(framed);
        return ZoneColors.of(framed.picture(), asked.outlines());
    }
}
