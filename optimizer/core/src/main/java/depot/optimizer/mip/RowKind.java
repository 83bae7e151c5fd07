package depot.optimizer.mip;

import depot.optimizer.mip.MipModel.Row;
import java.util.List;

/** What a row asks of its sum. */
enum RowKind {
    AT_MOST,
    AT_LEAST,
    EQUAL;

    /** The rows of a model that ask for something: those with a finite bound. The formats cannot say that a sum may be anything. */
    static List<Row> binding(MipModel model) {
        return model.rows().stream()
                .filter(row -> row.lower() != -MipModel.INFINITY || row.upper() != MipModel.INFINITY)
                .toList();
    }

    /** The kind of a row that asks for something. Models have no rows that are bounded on both sides by different numbers. */
    static RowKind of(Row row) {
        if (row.lower() == row.upper()) {
            return EQUAL;
        }
        if (row.lower() == -MipModel.INFINITY) {
            return AT_MOST;
        }
        if (row.upper() == MipModel.INFINITY) {
            return AT_LEAST;
        }
        throw new IllegalArgumentException("row " + row.name() + " has two bounds");
    }

    /** The number that the sum is compared with. */
    static double side(Row row) {
        return switch (of(row)) {
            case AT_MOST, EQUAL -> row.upper();
            case AT_LEAST -> row.lower();
        };
    }
}
