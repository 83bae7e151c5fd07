package depot.optimizer.cli;

/** Small pieces of text that several commands print. */
final class Words {

    private Words() {}

    /** A number with its noun, such as "1 depot" or "3 depots". */
    static String count(long number, String noun) {
        return number + " " + (number == 1 ? noun : noun + "s");
    }
}
