package umbercard.cards;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import org.junit.jupiter.api.Test;

class FacesTest {
    private static final Path BUNDLE = Path.of("src/main/resources/umbercard/words/cards.properties");

    @Test
    void everyFaceOfTheProgramHasAName() throws IOException {
        Properties words = new Properties();
        try (Reader in = Files.newBufferedReader(BUNDLE)) {
            words.load(in);
        }
        assertThat(new Cards().faces())
                .isNotEmpty()
                .allSatisfy(id -> assertThat(Faces.name(id))
                        .isEqualTo(words.getProperty("cards.face." + id + ".name"))
                        .isNotBlank());
    }

    @Test
    void aFaceFromElsewhereIsCalledByItsId() {
        assertThat(Faces.name("lost-edges")).isEqualTo("lost edges");
    }
}
