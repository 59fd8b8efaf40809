package umbercard.notes.order;

/** That by a rule one note goes before another; both by their present places, counted from 0. */
record Edge(int before, int after, OrderRule rule) {}
