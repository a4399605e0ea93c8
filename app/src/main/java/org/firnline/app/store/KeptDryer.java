package org.firnline.app.store;

/**
 * A dryer of this laboratory.
 *
 * @param id its number
 * @param name what people call it
 * @param kind {@code manifold}, {@code shelves} or {@code trays}
 * @param description one line for people
 * @param planSection the {@code dryer:} section that a plan file for it starts with, YAML
 */
public record KeptDryer(
    long id, String name, String kind, String description, String planSection) {}
