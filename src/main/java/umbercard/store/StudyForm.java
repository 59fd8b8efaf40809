package umbercard.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import umbercard.color.Lab;
import umbercard.geometry.Size;
import umbercard.model.Answer;
import umbercard.model.CardSettings;
import umbercard.model.ColorNote;
import umbercard.model.Light;
import umbercard.model.LostEdge;
import umbercard.model.Study;
import umbercard.model.Surface;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;

/** A study as it stands in its file: the order of the fields is the one in which a person would tell them. */
final class StudyForm {
    private static final String THUMBNAILS = "thumbnails";
    private static final String ZONES = "zones";
    private static final String NOTES = "notes";

    private StudyForm() {}

    /** The study's fields after those that a file begins with; the photograph's copy comes last. */
    static Tree write(Tree tree, Study study) {
        tree.put("title", study.title())
                .put("concept", study.concept())
                .put("light", study.light())
                .put("surface", surface(study.surface()))
                .put("reference", study.reference(), ReferenceForm::write)
                .putList(THUMBNAILS, study.thumbnails(), ThumbnailForm::write)
                .put("chosen", study.chosen(), TextNode::valueOf)
                .putList(ZONES, study.zones(), StudyForm::zone)
                .putListUnlessEmpty("lostEdges", sorted(study.lostEdges()), StudyForm::lostEdge)
                .putListUnlessEmpty("setOut", study.setOut(), BoxForm::stick)
                .putList(NOTES, study.notes(), NoteForm::write)
                .putListUnlessEmpty("rulesOff", study.rulesOff(), TextNode::valueOf)
                .put("cards", cards(study.cards()));
        if (!study.limits().isEmpty()) {
            tree.put("limits", limits(study.limits()));
        }
        return tree.putListUnlessEmpty("silenced", study.silenced(), TextNode::valueOf)
                .putListUnlessEmpty("finishing", study.finishing(), StudyForm::answer)
                .put("box", study.box(), box -> BoxForm.write(new Tree(), box).node())
                .rest(study.more())
                .put("copy", study.reference().flatMap(r -> r.copy()), ReferenceForm::copy);
    }

    static Study read(Fields fields) {
        return new Study(
                fields.textOf("title"),
                fields.text("concept").orElse(""),
                fields.choice("light", Light.class).orElse(Light.CLEAR),
                fields.objectOf("surface", StudyForm::surface),
                ReferenceForm.read(fields),
                distinct(fields, THUMBNAILS, fields.list(THUMBNAILS, ThumbnailForm::read), Thumbnail::id),
                fields.text("chosen"),
                distinct(fields, ZONES, fields.list(ZONES, StudyForm::zone), Zone::id),
                lostEdges(fields),
                fields.object("box", BoxForm::read),
                fields.list("setOut", BoxForm::stick),
                distinct(fields, NOTES, fields.list(NOTES, NoteForm::read), ColorNote::id),
                Set.copyOf(fields.texts("rulesOff").orElse(List.of())),
                fields.object("cards", StudyForm::cards).orElseGet(CardSettings::usual),
                limits(fields),
                Set.copyOf(fields.texts("silenced").orElse(List.of())),
                fields.list("finishing", StudyForm::answer),
                fields.rest());
    }

    /** The items, unless two of them have the same id. */
    static <T> List<T> distinct(Fields fields, String name, List<T> items, Function<T, String> id) {
        Set<String> seen = new HashSet<>();
        for (T item : items) {
            if (!seen.add(id.apply(item))) {
                throw fields.wrong(name, "store.wanted.distinct", id.apply(item));
            }
        }
        return items;
    }

    private static JsonNode surface(Surface surface) {
        return new Tree()
                .put("width", surface.width())
                .put("height", surface.height())
                .put("unit", surface.unit())
                .put("tape", surface.tape())
                .put("tone", surface.tone(), BoxForm::lab)
                .put("takesWet", surface.takesWet())
                .node();
    }

    private static Surface surface(Fields fields) {
        double width = fields.numberOf("width", Range.POSITIVE);
        double height = fields.numberOf("height", Range.POSITIVE);
        Surface.Unit unit = fields.choiceOf("unit", Surface.Unit.class);
        double tape = fields.number("tape", Range.NOT_NEGATIVE).orElse(0);
        boolean takesWet = fields.truth("takesWet", false);
        Optional<Lab> tone = BoxForm.lab(fields, "tone");
        return fields.fitting(() -> new Surface(width, height, unit, tape, tone, takesWet));
    }

    private static JsonNode zone(Zone zone) {
        return new Tree()
                .put("id", zone.id())
                .put("name", zone.name())
                .put("plane", zone.plane())
                .put("distance", zone.distance())
                .put("targetValue", zone.targetValue())
                .rest(zone.more())
                .node();
    }

    private static Zone zone(Fields fields) {
        return new Zone(
                fields.textOf("id"),
                fields.textOf("name"),
                fields.choiceOf("plane", Zone.Plane.class),
                fields.choiceOf("distance", Zone.Distance.class),
                fields.number("targetValue", Range.VALUE),
                fields.rest());
    }

    private static List<LostEdge> sorted(Set<LostEdge> edges) {
        return edges.stream()
                .sorted(Comparator.comparing(LostEdge::zone).thenComparing(LostEdge::otherZone))
                .toList();
    }

    private static JsonNode lostEdge(LostEdge edge) {
        return Tree.list(List.of(edge.zone(), edge.otherZone()), TextNode::valueOf);
    }

    private static Set<LostEdge> lostEdges(Fields fields) {
        Set<LostEdge> edges = new LinkedHashSet<>();
        for (List<String> pair : fields.textLists("lostEdges")) {
            if (pair.size() != 2) {
                throw fields.wrong("lostEdges", "store.wanted.pair");
            }
            edges.add(new LostEdge(pair.get(0), pair.get(1)));
        }
        return edges;
    }

    private static JsonNode cards(CardSettings cards) {
        return new Tree()
                .put("card", size(cards.card()))
                .put("landscape", cards.landscape())
                .put("page", cards.page(), StudyForm::size)
                .putList("faces", cards.faces(), TextNode::valueOf)
                .put("backs", cards.backs())
                .put("gutter", cards.gutter())
                .put("copies", cards.copies())
                .rest(cards.more())
                .node();
    }

    private static CardSettings cards(Fields fields) {
        CardSettings usual = CardSettings.usual();
        return new CardSettings(
                size(fields, "card").orElse(usual.card()),
                fields.truth("landscape", usual.landscape()),
                size(fields, "page"),
                fields.texts("faces").orElse(usual.faces()),
                fields.choice("backs", CardSettings.Backs.class).orElse(usual.backs()),
                fields.number("gutter", Range.NOT_NEGATIVE).orElse(usual.gutter()),
                fields.count("copies", usual.copies()),
                fields.rest());
    }

    private static JsonNode size(Size size) {
        return Tree.numbers(size.width(), size.height());
    }

    private static Optional<Size> size(Fields fields, String name) {
        return fields.numbers(name, Range.POSITIVE, "width", "height").map(size -> new Size(size[0], size[1]));
    }

    private static Tree limits(Map<String, Map<String, Double>> limits) {
        Tree tree = new Tree();
        limits.forEach((reading, values) -> {
            Tree inner = new Tree();
            values.forEach(inner::put);
            tree.put(reading, inner);
        });
        return tree;
    }

    private static Map<String, Map<String, Double>> limits(Fields fields) {
        Map<String, Map<String, Double>> limits = new TreeMap<>();
        fields.each("limits", (reading, all) -> {
            Map<String, Double> values = new TreeMap<>();
            all.each(reading, (limit, of) -> values.put(limit, of.numberOf(limit, Range.ANY)));
            limits.put(reading, values);
        });
        return limits;
    }

    private static JsonNode answer(Answer answer) {
        return new Tree()
                .put("question", answer.question())
                .put("words", answer.words())
                .node();
    }

    private static Answer answer(Fields fields) {
        return new Answer(fields.textOf("question"), fields.text("words").orElse(""));
    }
}
