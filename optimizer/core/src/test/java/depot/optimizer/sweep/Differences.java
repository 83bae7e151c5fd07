package depot.optimizer.sweep;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Finds where two records differ: paths of components with both values, such as "packTypes[0].price 300 240". */
final class Differences {

    private final List<String> found = new ArrayList<>();

    private Differences() {}

    /** Every difference, in the order of the components; rows that are only in one list are named with a plus. */
    static List<String> of(Record before, Record after) {
        Differences differences = new Differences();
        differences.compare("", before, after);
        return differences.found;
    }

    private void compare(String path, Object before, Object after) {
        if (Objects.equals(before, after)) {
            return;
        }
        if (before instanceof BigDecimal a && after instanceof BigDecimal b) {
            if (a.compareTo(b) != 0) {
                found.add("%s %s %s".formatted(path, plain(a), plain(b)));
            }
        } else if (before instanceof List<?> a && after instanceof List<?> b) {
            for (int i = 0; i < Math.max(a.size(), b.size()); i++) {
                if (i < a.size() && i < b.size()) {
                    compare("%s[%d]".formatted(path, i), a.get(i), b.get(i));
                } else {
                    found.add("%s + %s".formatted(path, i < a.size() ? a.get(i) : b.get(i)));
                }
            }
        } else if (before instanceof Record && after instanceof Record) {
            for (RecordComponent part : before.getClass().getRecordComponents()) {
                compare(
                        path.isEmpty() ? part.getName() : path + "." + part.getName(),
                        get(part, before),
                        get(part, after));
            }
        } else {
            found.add("%s %s %s".formatted(path, before, after));
        }
    }

    private static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }

    private static Object get(RecordComponent part, Object record) {
        try {
            return part.getAccessor().invoke(record);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException(e);
        }
    }
}
