/**
 * People who work in a shared laboratory, links that let them in once, and keys for devices. Start
 * reading at {@link org.firnline.app.store.people.People}.
 */
@NullMarked
package org.firnline.app.store.people;

import org.jspecify.annotations.NullMarked;
