package depot.optimizer.cli;

import java.util.LinkedHashMap;
import java.util.Map;

/** How a command ended, as the shell sees it. */
public enum ExitStatus {
    /** All went well; for a plan: it was replayed and every day is met. */
    PROVEN(0, "done; a plan is proven by its replay and meets every day"),
    /** Anything that has no status of its own. */
    OTHER(1, "anything else, such as a folder that cannot be written"),
    /** The command line or a table is wrong; nothing was written. */
    BAD_INPUT(2, "the command line or the tables are wrong; nothing was written"),
    /** A plan that leaves energy uncovered. */
    SHORTAGES(3, "a plan, but with shortages; or a budget that is too small for any plan"),
    /** The limits ended the search before there was a plan. */
    NO_PLAN(4, "no plan within the limits"),
    /** The replay contradicts the plan. */
    REPLAY_FAILED(5, "the replay failed: the plan does not do what it says");

    private final int code;
    private final String meaning;

    ExitStatus(int code, String meaning) {
        this.code = code;
        this.meaning = meaning;
    }

    /** The number that the process ends with. */
    public int code() {
        return code;
    }

    /** Every number with its meaning, in the form in which picocli lists them in a command's help. */
    static Map<String, String> list() {
        Map<String, String> list = new LinkedHashMap<>();
        for (ExitStatus status : values()) {
            list.put(Integer.toString(status.code), status.meaning);
        }
        return list;
    }
}
