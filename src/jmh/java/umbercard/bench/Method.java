package umbercard.bench;

import umbercard.geometry.Eye;
import umbercard.geometry.Region;
import umbercard.model.Thumbnail;
import umbercard.notan.Design;
import umbercard.notan.FoldCache;
import umbercard.notan.Glance;
import umbercard.notan.HatchFold;

/** The ways to fold a drawing that are held against each other. */
public enum Method {
    AREA("java.awt.geom.Area, every mark", 2_000_000),
    OVERLAY("plain JTS overlay, every mark", 50_000_000),
    EXACT("exact overlay near the change", Long.MAX_VALUE),
    HATCH("hatch lines where the mark passes", Long.MAX_VALUE);

    /** A fold that sees one drawing after the other; it may keep what it likes. */
    public interface Folds {
        Figures of(Thumbnail thumbnail, double ratio);
    }

    private final String words;
    private final long most;

    Method(String words, long most) {
        this.words = words;
        this.most = most;
    }

    /** What the tables call it. */
    public String words() {
        return words;
    }

    /** Whether one event takes so little, up to about ten seconds, that it is measured without being asked for. */
    public boolean isBearable(int marks, int nodes) {
        return (long) marks * marks * nodes <= most;
    }

    /** A fold that has seen nothing yet. */
    public Folds begin() {
        return switch (this) {
            case AREA -> new AreaFold();
            case OVERLAY -> new OverlayFold();
            case EXACT -> exact();
            case HATCH -> hatch();
        };
    }

    private static Folds exact() {
        FoldCache cache = new FoldCache();
        return (thumbnail, ratio) -> {
            Design design = cache.of(thumbnail, ratio);
            Region dark = design.dark();
            return new Figures(design.darkShare(), dark.moments(), dark.pieces().size());
        };
    }

    private static Folds hatch() {
        HatchFold folds = new HatchFold(Eye.DEFAULT);
        return (thumbnail, ratio) -> {
            Glance glance = folds.of(thumbnail, ratio);
            return new Figures(
                    glance.darkShare(), glance.dark(), glance.masses().dark());
        };
    }
}
