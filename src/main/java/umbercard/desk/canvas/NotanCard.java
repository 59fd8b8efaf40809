package umbercard.desk.canvas;

import java.awt.AlphaComposite;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JPanel;
import umbercard.desk.session.Session;
import umbercard.desk.session.Session.Change;
import umbercard.desk.theme.PaperCard;
import umbercard.desk.theme.Theme;
import umbercard.door.Instrument;
import umbercard.door.Place;
import umbercard.geometry.Point;
import umbercard.kernel.Plugins;
import umbercard.model.Reference;
import umbercard.model.Study;
import umbercard.photo.ValueCurve;
import umbercard.words.Words;

/**
 * The notan card, which is the canvas: an index card in its true proportions, the faded reference inside the frame, the
 * marks over it. While the pointer is on it darks let the photograph through; at rest they are solid.
 */
public final class NotanCard extends JPanel {
    private static final float WHILE_DRAWING = 0.7f;

    /** What is shown of the card while a key is held. */
    enum Bare {
        NO,
        NOTAN,
        REFERENCE
    }

    /** What the instrument in hand shows over the card. */
    private record Over(boolean inUse, Optional<String> hint, List<Place> places) {}

    /** Pixels round a part that is painted anew, for smooth edges and an image that does not lie on whole pixels. */
    private static final int EDGE = 2;

    private final Session session;
    private final Handling handling;
    private final transient List<Runnable> whenTaken = new ArrayList<>();
    private final MarksLayer marks = new MarksLayer();
    private final transient List<Runnable> whenSeen = new ArrayList<>();
    private final ReferenceLayer reference = new ReferenceLayer(this::seen);
    private SeenAs seenAs = SeenAs.COLOR;
    private Bare bare = Bare.NO;
    private boolean pointerOn;
    private boolean zonesShown;
    private transient List<Place> looked = List.of();
    private transient CardState state;
    private transient Over over = new Over(false, Optional.empty(), List.of());

    /** The card of the study on the desk, to be drawn on with those of the instruments that work. */
    public NotanCard(Session session, Plugins<Instrument> instruments) {
        this.session = session;
        this.state = CardState.of(session);
        this.handling = new Handling(session, instruments, this::taken);
        setName("notan-card");
        setOpaque(false);
        setFocusable(true);
        setMinimumSize(new Dimension(320, 220));
        setPreferredSize(new Dimension(660, 440));
        getAccessibleContext().setAccessibleName(Words.say("desk.notan-card.name"));
        getAccessibleContext().setAccessibleDescription(Words.say("desk.notan-card.description"));
        new CardGestures(this, handling).listen();
        session.listen(this::changed);
    }

    private void changed(Change change) {
        switch (change) {
            case STUDY, PREVIEW -> followStudy();
            case SHOWN, PHOTOGRAPH -> {
                handling.drop();
                followStudy();
                repaint();
            }
            case FILE, WORDS -> {}
        }
    }

    /** Paints what looks different, which is a small part of the card while a mark is dragged. */
    private void followStudy() {
        CardState now = CardState.of(session);
        now.changedSince(state).ifPresentOrElse(this::repaintInFrame, this::repaint);
        state = now;
    }

    private void repaintInFrame(Rectangle2D window) {
        if (!Windows.isNowhere(window)) {
            repaintAround(place().toScreen().createTransformedShape(window).getBounds());
        }
    }

    private void repaintAround(Rectangle pixels) {
        pixels.grow(EDGE, EDGE);
        repaint(pixels);
    }

    /** Follows what the instrument in hand shows after a gesture. */
    void felt() {
        Over now = new Over(
                isInUse(),
                isInUse() ? handling.hint() : Optional.empty(),
                handling.preview().places());
        if (now.inUse() != over.inUse() || !now.hint().equals(over.hint())) {
            repaint();
        } else if (!now.places().equals(over.places())) {
            AffineTransform toScreen = place().toScreen();
            PlacePainter.around(over.places(), toScreen).ifPresent(this::repaintAround);
            PlacePainter.around(now.places(), toScreen).ifPresent(this::repaintAround);
        }
        over = now;
    }

    private boolean isInUse() {
        return bare == Bare.NO && (pointerOn || handling.isHolding());
    }

    /**
     * Takes up an instrument; the one already in hand goes on with what it has half made. One that cannot be taken up is
     * switched off, and the first that can is taken up instead.
     */
    public void take(Instrument instrument) {
        if (!handling.instrument().equals(Optional.of(instrument))) {
            handling.take(instrument);
        }
    }

    /** Runs {@code listener} whenever another instrument is in hand, or none, or one was switched off. */
    public void whenTaken(Runnable listener) {
        whenTaken.add(listener);
    }

    private void taken() {
        whenTaken.forEach(Runnable::run);
        repaint();
    }

    /** The instrument in hand; empty where none works. */
    public Optional<Instrument> instrument() {
        return handling.instrument();
    }

    public SeenAs seenAs() {
        return seenAs;
    }

    /** Looks at the reference in another way. */
    public void seeAs(SeenAs way) {
        seenAs = way;
        repaint();
    }

    /** Runs {@code listener} whenever the photograph is seen anew. */
    public void whenSeen(Runnable listener) {
        whenSeen.add(listener);
    }

    private void seen() {
        whenSeen.forEach(Runnable::run);
        repaint();
    }

    /** How much of the photograph lies below each value, as squinted at; empty while none is seen. */
    public Optional<ValueCurve> valueCurve() {
        return reference.seen().map(ReferenceLayer.Seen::curve);
    }

    /** The Munsell value at which the photograph is parted; empty while it is not. */
    public OptionalDouble split() {
        return reference.seen().map(ReferenceLayer.Seen::split).orElse(OptionalDouble.empty());
    }

    /**
     * What lies at a pixel of this component; empty outside the frame.
     *
     * @param disk the radius that is averaged over, as a share of the frame's diagonal
     */
    public Optional<UnderPointer> under(int x, int y, double disk) {
        Point at = place().toFrame(x, y);
        double ratio = session.study().ratio();
        boolean outside = at.x() < 0 || at.y() < 0 || at.x() >= ratio || at.y() >= 1;
        return outside
                ? Optional.empty()
                : Optional.of(UnderPointer.at(
                        at,
                        disk * Math.hypot(ratio, 1),
                        reference.seen().map(ReferenceLayer.Seen::framed),
                        session.thumbnail()));
    }

    /** Shows places over the card, for example of a reading that is being looked at. */
    public void look(List<Place> places) {
        looked = List.copyOf(places);
        repaint();
    }

    /** Zones, and zones of notes, as what is shown of them on the card. */
    private List<Place> onCard(List<Place> places) {
        return session.thumbnail()
                .map(shown -> places.stream()
                        .map(place -> ZonesPainter.onCard(place, session.seen(), shown))
                        .toList())
                .orElse(places);
    }

    /** Shows where the zones lie, or no longer; while zones are outlined they are shown anyway. */
    public void showZones(boolean on) {
        if (zonesShown != on) {
            zonesShown = on;
            repaint();
        }
    }

    /** Whether the picture shown is up to date. */
    public boolean isSettled() {
        return reference.isSettled();
    }

    void bare(Bare shown) {
        if (bare != shown) {
            bare = shown;
            repaint();
        }
    }

    /** Lets the photograph be seen through the darks, as while the pointer is on the card. */
    public void seeThrough(boolean on) {
        pointerOn(on);
    }

    void pointerOn(boolean on) {
        if (pointerOn != on) {
            pointerOn = on;
            repaint();
        }
    }

    /** Where the card lies now. */
    CardPlace place() {
        return CardPlace.in(
                getWidth(),
                getHeight(),
                session.study().cards().card().turned(session.study().cards().landscape()),
                session.study().ratio());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        CardPlace place = place();
        PaperCard.paint(g, place.card(), false);
        boolean inUse = isInUse();
        CardWords.paint(g, place, session.seen(), inUse ? handling.hint() : Optional.empty());
        paintPicture(g, place);
        if (bare == Bare.NO) {
            PlacePainter places = new PlacePainter(color("ink"), color("paper"));
            if (zonesShown || handling.instrument().map(Instrument::id).equals(Optional.of("zone"))) {
                session.thumbnail().ifPresent(shown -> ZonesPainter.paint(g, place, session.seen(), shown));
            }
            CardWords.paintLevels(g, place, session.thumbnail(), session.study().ratio());
            places.paint(g, onCard(looked), place.toScreen());
            places.paint(g, inUse ? handling.preview().places() : List.of(), place.toScreen());
        }
        g.dispose();
    }

    private static Color color(String name) {
        return Theme.color("Umbercard." + name);
    }

    private void paintPicture(Graphics2D g, CardPlace place) {
        double scale = g.getTransform().getScaleY();
        int width = (int) Math.ceil(place.frame().getWidth() * scale);
        int height = (int) Math.max(1, Math.round(place.frame().getHeight() * scale));
        Study study = session.study();
        reference.want(session.sight()
                .flatMap(photo -> ReferenceLayer.Wanted.of(photo, study, session.thumbnail(), height, seenAs)));
        Graphics2D inside = (Graphics2D) g.create();
        inside.clip(place.frame());
        if (bare != Bare.NOTAN) {
            float shown = bare == Bare.REFERENCE
                    ? 1
                    : 1
                            - (float) session.seen()
                                    .reference()
                                    .map(Reference::fade)
                                    .orElse(0.0)
                                    .doubleValue();
            reference.image().ifPresent(image -> draw(inside, image, place.frame(), shown));
        }
        if (bare != Bare.REFERENCE) {
            boolean solid = bare == Bare.NOTAN || !(pointerOn || handling.isHolding());
            session.thumbnail()
                    .map(thumbnail -> marks.image(thumbnail, width, height, color("dark")))
                    .ifPresent(image -> draw(inside, image, place.frame(), solid ? 1 : WHILE_DRAWING));
        }
        inside.dispose();
        g.setColor(color("edge"));
        Rectangle2D frame = place.frame();
        g.draw(new Rectangle2D.Double(
                frame.getX() - 0.5, frame.getY() - 0.5, frame.getWidth() + 1, frame.getHeight() + 1));
    }

    private static void draw(Graphics2D g, BufferedImage image, Rectangle2D frame, float opacity) {
        Graphics2D layer = (Graphics2D) g.create();
        layer.setComposite(AlphaComposite.SrcOver.derive(opacity));
        layer.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        AffineTransform map = AffineTransform.getTranslateInstance(frame.getX(), frame.getY());
        double pixel = frame.getHeight() / image.getHeight();
        map.scale(pixel, pixel);
        layer.drawImage(image, map, null);
        layer.dispose();
    }
}
