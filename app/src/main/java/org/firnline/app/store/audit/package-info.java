/**
 * The audit: every change of the laboratory's records, in the same transaction as the change, each
 * entry chained to the one before it by its hash. Start reading at {@link
 * org.firnline.app.store.audit.Changes}, the door every write goes through.
 */
@NullMarked
package org.firnline.app.store.audit;

import org.jspecify.annotations.NullMarked;
