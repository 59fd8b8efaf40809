package umbercard.door;

/** What the pointer does on the thumbnail: lay, lift, move a line. A plug-in; stateless. */
public interface Instrument extends Ranked {
    /** Lower-case words with hyphens; also the key of its words, {@code instrument.<id>.name}, {@code .tip} and {@code .done}. */
    @Override
    String id();

    /** The letter that picks it up, lower case. */
    String key();

    /** Takes it up. The hand lives until another instrument is taken up. */
    Hand pick(Bench bench);
}
