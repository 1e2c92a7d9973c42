package org.drillwright.print.bench.peers.card;

/** Words in one face. */
record Run(String text, boolean bold) {}
