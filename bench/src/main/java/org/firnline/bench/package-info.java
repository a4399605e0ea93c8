/**
 * How fast Firnline is, each figure beside a named baseline measured in the same run. One class per
 * question, with the trap it avoids; start reading at {@link org.firnline.bench.Question}.
 */
@NullMarked
package org.firnline.bench;

import org.jspecify.annotations.NullMarked;
