package umbercard.cli;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import umbercard.model.ColorNote;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.model.Zone;
import umbercard.notes.Purposes;
import umbercard.notes.turned.Offer;
import umbercard.notes.turned.Offers;
import umbercard.store.StudyFolder;
import umbercard.words.Message;
import umbercard.words.Trouble;
import umbercard.words.Words;

/** Notes offered for a study's color card, to be printed and written. */
record OffersReport(Opened opened, Thumbnail thumbnail, Offers offers, Optional<Path> written) {

    /** Refuses to write over a file that exists. */
    static void refuseExisting(Path written) throws Trouble {
        if (Files.exists(written, LinkOption.NOFOLLOW_LINKS)) {
            throw new Trouble(Message.of("cli.trouble.exists", written.toString()));
        }
    }

    /**
     * Writes the study with the notes after its others, where that is asked for.
     *
     * @throws Trouble if there is nothing to add, or it cannot be written
     */
    void write(Path file) throws Trouble {
        if (written.isEmpty()) {
            return;
        }
        if (offers.offers().isEmpty()) {
            Message why = offers.remarks().isEmpty()
                    ? Message.of("cli.offers.nothing")
                    : offers.remarks().get(0);
            throw new Trouble(Message.of("cli.trouble.nothing-offered", opened.name(), why));
        }
        StudyFolder.saveAs(offers.adding().apply(opened.study()), file, written.get());
    }

    /** A line for each note, then what was left out, then where they went. */
    String inWords() {
        List<String> lines = new ArrayList<>();
        lines.add(Words.say("cli.match.of", opened.study().title(), thumbnail.name()));
        List<List<String>> rows = offers.offers().stream().map(this::row).toList();
        lines.addAll(Columns.of(rows));
        offers.remarks().forEach(remark -> lines.add(Words.say(remark)));
        written.ifPresent(
                path -> lines.add(Words.say("cli.offers.added", offers.offers().size(), path.toString())));
        return String.join(System.lineSeparator(), lines);
    }

    private List<String> row(Offer offer) {
        ColorNote note = offer.note();
        return List.of(
                MatchReport.title(note.stick()),
                zoneName(note),
                Purposes.words(note.purpose()),
                Words.say(offer.reason()));
    }

    private String zoneName(ColorNote note) {
        Study study = opened.study();
        return note.zone().flatMap(study::zone).map(Zone::name).orElse("");
    }

    /** One JSON object with stable keys, for scripts; {@code written} is there if a file was. Sentences have Munsell values. */
    String json() {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("study", opened.study().title());
        json.put("thumbnail", thumbnail.name());
        json.put("offers", offers.offers().stream().map(OffersReport::json).toList());
        json.put("remarks", offers.remarks().stream().map(MatchJson::said).toList());
        written.ifPresent(path -> json.put("written", path.toString()));
        return JsonText.of(json);
    }

    private static Map<String, Object> json(Offer offer) {
        ColorNote note = offer.note();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", note.id());
        json.put("stick", MatchJson.stick(note.stick()));
        note.zone().ifPresent(zone -> json.put("zone", zone));
        json.put("purpose", note.purpose());
        json.put("direction", note.direction().key());
        json.put("touch", note.touch().key());
        json.put("reason", MatchJson.said(offer.reason()));
        return json;
    }
}
