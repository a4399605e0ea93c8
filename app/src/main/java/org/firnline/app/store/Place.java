package org.firnline.app.store;

/**
 * The laboratory these pages belong to.
 *
 * @param name as shown at the top of every page
 * @param invented true when its data is made up, which every page then says
 */
public record Place(String name, boolean invented) {}
