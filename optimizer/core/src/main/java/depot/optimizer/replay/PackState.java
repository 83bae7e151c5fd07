package depot.optimizer.replay;

/** One pack: what it is, whose it is and how much charge it holds. */
final class PackState {
    final PackShelf shelf;

    /** 0 to 1 of its usable energy. */
    private double charge;

    PackState(PackShelf shelf) {
        this.shelf = shelf;
        this.charge = 1;
    }

    double charge() {
        return charge;
    }

    void setCharge(double share) {
        charge = share;
    }
}
