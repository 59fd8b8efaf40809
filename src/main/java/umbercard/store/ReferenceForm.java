package umbercard.store;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;
import umbercard.geometry.Line;
import umbercard.geometry.Point;
import umbercard.model.Reference;
import umbercard.model.Squint;

/** The reference as it stands in a study's file, and the copy of the photograph, which stands at the file's end. */
final class ReferenceForm {
    private ReferenceForm() {}

    static JsonNode write(Reference reference) {
        return new Tree()
                .put("file", reference.file())
                .putUnlessEmpty("sha256", reference.sha256())
                .put("fade", reference.fade())
                .put("frame", ThumbnailForm.frame(reference.frame()))
                .put("squint", squint(reference.squint()))
                .put("split", reference.split())
                .put("ownHorizon", reference.ownHorizon(), ReferenceForm::line)
                .rest(reference.more())
                .node();
    }

    /** The reference of a study, with the copy of the photograph if the study carries one. */
    static Optional<Reference> read(Fields study) {
        Optional<Reference> reference = study.object("reference", ReferenceForm::reference);
        return reference.map(r -> r.withCopy(study.object("copy", ReferenceForm::copy)));
    }

    private static Reference reference(Fields fields) {
        Reference usual = Reference.to(
                fields.textOf("file"),
                fields.text("sha256").orElse(""),
                fields.objectOf("frame", ThumbnailForm::frame));
        return new Reference(
                usual.file(),
                usual.sha256(),
                usual.frame(),
                fields.number("fade", Range.SHARE).orElse(usual.fade()),
                fields.object("squint", ReferenceForm::squint).orElse(usual.squint()),
                fields.number("split", Range.VALUE),
                fields.object("ownHorizon", ReferenceForm::line),
                Optional.empty(),
                fields.rest());
    }

    private static JsonNode squint(Squint squint) {
        return new Tree().put("way", squint.way()).put("sigma", squint.sigma()).node();
    }

    private static Squint squint(Fields fields) {
        return new Squint(fields.textOf("way"), fields.numberOf("sigma", Range.SQUINT));
    }

    private static JsonNode line(Line line) {
        return new Tree()
                .put("from", ThumbnailForm.point(line.from()))
                .put("to", ThumbnailForm.point(line.to()))
                .node();
    }

    private static Line line(Fields fields) {
        return new Line(end(fields, "from"), end(fields, "to"));
    }

    private static Point end(Fields fields, String name) {
        return ThumbnailForm.point(fields, name, Range.PLACE)
                .orElseThrow(() -> fields.wrong(name, "store.wanted.present"));
    }

    static JsonNode copy(Reference.Copy copy) {
        return new Tree().put("type", copy.type()).put("base64", copy.base64()).node();
    }

    private static Reference.Copy copy(Fields fields) {
        return new Reference.Copy(fields.textOf("type"), fields.textOf("base64"));
    }
}
