package umbercard.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import umbercard.door.Finding;
import umbercard.door.Plan;
import umbercard.door.Reading;
import umbercard.kernel.Plugins;
import umbercard.model.Study;
import umbercard.model.Thumbnail;
import umbercard.notan.Design;
import umbercard.notan.Fold;
import umbercard.photo.FramedReference;
import umbercard.photo.FramedZones;
import umbercard.picture.Picture;
import umbercard.readings.Evaluation;
import umbercard.readings.Wishes;
import umbercard.store.Preferred;
import umbercard.store.StudyFile;
import umbercard.words.Message;
import umbercard.words.Trouble;

/** A study and where it came from, which its sentences name. */
record Opened(String name, Study study) {

    static Opened read(Path file) throws Trouble {
        return new Opened(file.toString(), StudyFile.read(file));
    }

    /**
     * The thumbnail wanted: by its name, else by its place counted from 1; without a wish the chosen one.
     *
     * @throws Trouble if the study does not have it, or has none
     */
    Thumbnail thumbnail(Optional<String> wish) throws Trouble {
        List<Thumbnail> all = study.thumbnails();
        if (all.isEmpty()) {
            throw new Trouble(Message.of("cli.trouble.no-thumbnail", name));
        }
        if (wish.isEmpty()) {
            return study.chosenThumbnail().orElse(all.get(0));
        }
        return all.stream()
                .filter(thumbnail -> thumbnail.name().equals(wish.get()))
                .findFirst()
                .or(() -> at(wish.get()))
                .orElseThrow(() -> new Trouble(Message.of("cli.trouble.other-thumbnail", name, wish.get(), names())));
    }

    private Optional<Thumbnail> at(String place) {
        List<Thumbnail> all = study.thumbnails();
        return place.matches("[1-9]\\d{0,8}") && Integer.parseInt(place) <= all.size()
                ? Optional.of(all.get(Integer.parseInt(place) - 1))
                : Optional.empty();
    }

    private String names() {
        return String.join(
                ", ", study.thumbnails().stream().map(Thumbnail::name).toList());
    }

    Design design(Thumbnail thumbnail) {
        return Fold.of(thumbnail, study.ratio());
    }

    /**
     * What the readings find, as the painter and the study wish.
     *
     * @param photograph the whole of it, if it is at hand
     */
    Map<String, Finding> findings(Plugins<Reading> readings, Thumbnail thumbnail, Optional<Picture> photograph) {
        Optional<Picture> framed = photograph.flatMap(whole -> new FramedReference().of(study, thumbnail, whole));
        Plan plan = new Plan(study, thumbnail, design(thumbnail), framed, () -> false)
                .withColors(() -> new FramedZones().colors(thumbnail, study, photograph));
        return Evaluation.of(readings, plan, wishes());
    }

    /** What the painter wishes of the readings, whatever the study. */
    static Wishes wishes() {
        return new Wishes(Preferred.limits(), Preferred.silenced());
    }
}
