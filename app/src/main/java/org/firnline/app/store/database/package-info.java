/**
 * Opening a database: SQLite in the data folder, or PostgreSQL by one setting; both brought up to
 * date before anyone reads them. Start reading at {@link
 * org.firnline.app.store.database.Databases}.
 */
@NullMarked
package org.firnline.app.store.database;

import org.jspecify.annotations.NullMarked;
