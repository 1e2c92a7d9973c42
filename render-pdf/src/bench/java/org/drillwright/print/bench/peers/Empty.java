package org.drillwright.print.bench.peers;

/** A program that does nothing: what Java itself takes to start and end. */
public final class Empty {

    private Empty() {}

    public static void main(String[] args) {}
}
