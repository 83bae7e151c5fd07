package depot.optimizer.sweep.change;

import depot.optimizer.dictionary.ChangeKind;
import java.math.BigDecimal;

/**
 * One change of a scenario.
 *
 * @param of key of what it is about, empty: all, or the whole scenario
 * @param value in the way and the unit of the kind
 */
public record Change(ChangeKind kind, String of, BigDecimal value) {

    /** What is changed, whatever the value. */
    public record Subject(ChangeKind kind, String of) {
        /** The change of this to a value. */
        public Change to(BigDecimal value) {
            return new Change(kind, of, value);
        }
    }

    /** What is changed. */
    public Subject subject() {
        return new Subject(kind, of);
    }

    /** Whether the change is about something with this key. */
    boolean isAbout(String key) {
        return of.isEmpty() || of.equals(key);
    }

    /** A text that no other change has, the same for equal values however they are written. */
    public String key() {
        return "%s of '%s' %s".formatted(kind.word(), of, plain());
    }

    String plain() {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
