package depot.optimizer.check;

import java.util.List;

/** Every rule between cells, rows and tables; what a single cell may hold is declared in the dictionary. */
final class Rules {
    static final List<Rule> ALL = List.of(TableRules::rows, TableRules::references, TableRules::keys);

    private Rules() {}
}
