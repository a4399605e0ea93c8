/**
 * Settings: people and their rights, keys for devices, one's own password, backups, the audit, the
 * profile of record keeping. Start reading at {@link org.firnline.app.settings.SettingsPage}.
 */
@NullMarked
package org.firnline.app.settings;

import org.jspecify.annotations.NullMarked;
