package depot.optimizer.report.page;

import depot.optimizer.report.table.Purchase;

/** Something bought, as it is added up over depots: circuits and supplies of all depots are one item each. */
record BoughtItem(Purchase.Kind kind, String item) implements Comparable<BoughtItem> {

    private static final String EVERYWHERE = "(all depots)";

    static BoughtItem of(Purchase line) {
        boolean building = line.kind() == Purchase.Kind.CIRCUIT || line.kind() == Purchase.Kind.SUPPLY;
        return new BoughtItem(line.kind(), building ? EVERYWHERE : line.item());
    }

    /** Such as "B10 (pack)" or "new circuit". */
    String words() {
        return item.equals(EVERYWHERE) ? kind.words() : item + " (" + kind.words() + ")";
    }

    @Override
    public int compareTo(BoughtItem other) {
        int byKind = kind.compareTo(other.kind);
        return byKind != 0 ? byKind : item.compareTo(other.item);
    }
}
