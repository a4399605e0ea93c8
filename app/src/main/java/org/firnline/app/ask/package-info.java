/**
 * Ask: five questions that practitioners put most often, each answered in a minute from four to six
 * values, without a log or an account. Start reading at {@link org.firnline.app.ask.AskTopics}.
 */
@NullMarked
package org.firnline.app.ask;

import org.jspecify.annotations.NullMarked;
