package umbercard.desk.trial;

import umbercard.color.Lab;
import umbercard.geometry.Region;

/** A flat area of a picture in frame units, whose height is 1. */
record Patch(Region area, Lab color) {}
