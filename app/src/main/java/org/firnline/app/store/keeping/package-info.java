/**
 * Looking after a whole laboratory: is it unaltered, a copy of it, a copy put back, a move to
 * another database. Start reading at {@link org.firnline.app.store.keeping.Verification}.
 */
@NullMarked
package org.firnline.app.store.keeping;

import org.jspecify.annotations.NullMarked;
