/**
 * The tyre itself: size designation and geometry, load index, speed symbol, label classes of both
 * eras and their limits. What is marked "from memory, check the official text" has no printed
 * source beside it.
 */
package org.griplore.store.tyre;
