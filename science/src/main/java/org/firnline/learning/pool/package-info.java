/**
 * Many runs together: pooled values with shrinkage, and what predictions have been worth. Uses
 * {@code numerics}. Start reading at {@link org.firnline.learning.pool.PooledValue}.
 */
@NullMarked
package org.firnline.learning.pool;

import org.jspecify.annotations.NullMarked;
