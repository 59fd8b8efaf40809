package umbercard.model;

/** What the painter answered to one of the questions asked at the end. */
public record Answer(String question, String words) {}
