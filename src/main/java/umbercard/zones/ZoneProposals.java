package umbercard.zones;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import umbercard.geometry.Outline;
import umbercard.geometry.Point;
import umbercard.geometry.Region;
import umbercard.model.Level;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.model.Zone.Distance;
import umbercard.model.Zone.Plane;
import umbercard.notan.Design;
import umbercard.words.Message;
import umbercard.words.Words;

/**
 * Zones that a thumbnail could have: what lies above the land edge is sky, what lies below the waterline water, and of the land
 * between each large mass is a zone; dark masses stand upright, light ones lie. The higher in the frame, the farther off. A
 * place to begin, no more: common practice, no source. Proposals overlap neither each other nor the zones that are there.
 */
public final class ZoneProposals {
    /** What is under this share of the frame is no zone of its own. */
    private static final double LEAST = 0.02;

    /** How far beyond the frame half-planes reach. */
    private static final double BEYOND = 2;

    private final Study study;
    private final Thumbnail thumbnail;
    private final Design design;
    private final Region free;
    private final List<Proposal> found = new ArrayList<>();

    private ZoneProposals(Study study, Thumbnail thumbnail, Design design) {
        this.study = study;
        this.thumbnail = thumbnail;
        this.design = design;
        free = ZoneMap.of(study, thumbnail).gaps();
    }

    /** Proposals for what no zone covers yet, the sky first, then from the top down. */
    public static List<Proposal> of(Study study, Thumbnail thumbnail, Design design) {
        return new ZoneProposals(study, thumbnail, design).proposed();
    }

    /**
     * The mass of dark or of light under a point, as a zone; without one where the point lies outside the frame.
     *
     * @param at in frame units
     */
    public static Optional<Proposal> mass(Study study, Thumbnail thumbnail, Design design, Point at) {
        boolean dark = design.dark().contains(at);
        Region all = dark ? design.dark() : design.light();
        return all.pieces().stream()
                .filter(piece -> piece.contains(at))
                .findFirst()
                .map(piece -> new Proposal(
                        guessed(study, thumbnail, piece, dark),
                        piece,
                        Message.of("zones.because.mass", Message.of("zones." + (dark ? "dark" : "light")))));
    }

    /** A zone for an area: plane and distance as its place in the frame and the zones there suggest, its name a number. */
    public static Zone guessed(Study study, Thumbnail thumbnail, Region area, boolean dark) {
        Point middle = area.moments().centroid().orElse(new Point(study.ratio() / 2, 0.5));
        Plane plane = isAbove(thumbnail.landEdge().or(thumbnail::horizon), middle, study)
                ? Plane.SKY
                : isBelow(thumbnail.waterline(), middle, study) ? Plane.WATER : dark ? Plane.UPRIGHT : Plane.SLOPE;
        int number = 1;
        while (hasName(study, number)) {
            number++;
        }
        Distance distance = distance(thumbnail, plane, middle);
        while (distance != Distance.NEAR && overlaps(study, thumbnail, area, plane, distance)) {
            distance = distance == Distance.FAR ? Distance.MIDDLE : Distance.NEAR;
        }
        return new Zone(study.newId("z"), name(number), plane, distance);
    }

    /** Whether a zone of that plane and distance lies there already: then what is outlined seems to stand before it. */
    private static boolean overlaps(Study study, Thumbnail thumbnail, Region area, Plane plane, Distance distance) {
        return study.zones().stream()
                .filter(zone -> zone.plane() == plane && zone.distance() == distance)
                .map(zone -> Region.of(thumbnail.zoneAreas().getOrDefault(zone.id(), List.of())))
                .anyMatch(other -> other.intersect(area).area() > LEAST * area.area());
    }

    private static boolean hasName(Study study, int number) {
        return study.zones().stream().anyMatch(zone -> zone.name().equals(name(number)));
    }

    private static String name(int number) {
        return Words.say("zones.named", Integer.toString(number));
    }

    private static boolean isAbove(Optional<Level> line, Point at, Study study) {
        return line.filter(level -> at.y() < level.yAt(at.x(), study.ratio())).isPresent();
    }

    private static boolean isBelow(Optional<Level> line, Point at, Study study) {
        return line.filter(level -> at.y() > level.yAt(at.x(), study.ratio())).isPresent();
    }

    /** In thirds from the land edge down to the foot of the frame. */
    private static Distance distance(Thumbnail thumbnail, Plane plane, Point middle) {
        if (plane == Plane.SKY) {
            return Distance.FAR;
        }
        double top = thumbnail.horizonOrLandEdge().map(Level::y).orElse(0.0);
        double down = (middle.y() - top) / Math.max(0.01, 1 - top);
        return down < 1 / 3.0 ? Distance.FAR : down < 2 / 3.0 ? Distance.MIDDLE : Distance.NEAR;
    }

    private List<Proposal> proposed() {
        double ratio = study.ratio();
        Optional<Level> edge = thumbnail.landEdge().or(thumbnail::horizon);
        Region sky = edge.map(line -> above(line, ratio)).orElse(Region.empty());
        Region water = thumbnail
                .waterline()
                .map(line -> design.frame().minus(above(line, ratio)))
                .orElse(Region.empty());
        add(Plane.SKY, Distance.FAR, "sky", sky.intersect(free));
        Region land = free.minus(sky).minus(water);
        addMasses(land.intersect(design.dark()), Plane.UPRIGHT, "upright");
        addMasses(land.minus(design.dark()), Plane.SLOPE, "slope");
        add(Plane.WATER, Distance.NEAR, "water", water.intersect(free));
        return List.copyOf(found);
    }

    private void addMasses(Region part, Plane plane, String kind) {
        for (Region mass : part.pieces()) {
            mass.moments().centroid().ifPresent(middle -> add(plane, distance(thumbnail, plane, middle), kind, mass));
        }
    }

    private Region above(Level line, double ratio) {
        List<Point> corners = List.of(
                new Point(-BEYOND, -BEYOND),
                new Point(ratio + BEYOND, -BEYOND),
                new Point(ratio + BEYOND, line.yAt(ratio + BEYOND, ratio)),
                new Point(-BEYOND, line.yAt(-BEYOND, ratio)));
        return Region.of(Outline.polygon(corners)).intersect(design.frame());
    }

    /** Parts of one plane and distance are one zone. */
    private void add(Plane plane, Distance distance, String kind, Region area) {
        if (area.area() < LEAST * study.ratio()) {
            return;
        }
        for (int i = 0; i < found.size(); i++) {
            Proposal before = found.get(i);
            if (before.zone().plane() == plane && before.zone().distance() == distance) {
                found.set(i, new Proposal(before.zone(), before.area().union(area), before.reason()));
                return;
            }
        }
        String id = study.newIds("z", found.size() + 1).get(found.size());
        String name = Words.say("zones.name." + kind, Message.of("trade.distance." + distance.key()));
        found.add(new Proposal(new Zone(id, free(name), plane, distance), area, Message.of("zones.because." + kind)));
    }

    private String free(String name) {
        int number = 1;
        while (isTaken(number == 1 ? name : name + " " + number)) {
            number++;
        }
        return number == 1 ? name : name + " " + number;
    }

    private boolean isTaken(String name) {
        return study.zones().stream().anyMatch(zone -> zone.name().equals(name));
    }
}
