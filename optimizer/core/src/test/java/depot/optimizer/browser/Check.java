package depot.optimizer.browser;

/** What is asked of every page. */
public enum Check {
    /** No errors or warnings in the console, no exceptions. */
    CONSOLE,
    /** The page is its one file: no other requests. */
    REQUESTS,
    /** No scripts, no addresses elsewhere. */
    STANDALONE,
    /** The same words without scripts. */
    SCRIPTS_OFF,
    /** Every link and anchor leads to a place that is there. */
    LINKS,
    /** No sideways scrolling of the page on a phone of 360 px, nor at the 320 px of WCAG 2.2, 1.4.10. */
    PHONE_WIDTH,
    /** Nothing is cut off at the edge of A4 paper with the margins of the style sheet. */
    PAPER_WIDTH,
    /** Tab reaches everything, in the order of the page, in view, with a ring around it that can be seen. */
    KEYBOARD,
    /** Banner, navigation, main part and footer, each with its name; language and title of the page. */
    LANDMARKS,
    /** One first heading, no level left out. */
    HEADINGS,
    /** Captions, and headings of columns and rows that say which they are. */
    TABLES,
    /** Drawings have a title, a description, and their numbers in a table. */
    CHARTS,
    /** WCAG 2.2, 1.4.3 (text) and 1.4.11 (drawings), level AA. */
    CONTRAST,
    /** Lines and bars of a drawing differ by their dashes, or by colours that all eyes tell apart. */
    COLOURS
}
