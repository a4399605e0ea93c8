/**
 * Where everything is kept: the data folder, the database with its migrations, and the raw files
 * byte for byte. May use nothing of the features. Start reading at {@link
 * org.firnline.app.store.DataFolder}.
 */
@NullMarked
package org.firnline.app.store;

import org.jspecify.annotations.NullMarked;
