package umbercard.desk.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class WrappingTest {
    @Test
    void aSentenceThatFitsIsOneLine() {
        assertThat(Wrapping.lines("Raise the land edge.", 20, String::length)).containsExactly("Raise the land edge.");
    }

    @Test
    void linesBreakAtSpacesAndStayWithinTheWidth() {
        assertThat(Wrapping.lines("Raise the land edge or join the darks.", 13, String::length))
                .containsExactly("Raise the", "land edge or", "join the", "darks.");
    }

    @Test
    void aWordThatIsTooWideStandsAlone() {
        assertThat(Wrapping.lines("an immeasurable share", 6, String::length))
                .containsExactly("an", "immeasurable", "share");
    }

    @Test
    void nothingIsOneEmptyLine() {
        assertThat(Wrapping.lines("", 6, String::length)).containsExactly("");
    }
}
