/** What is written on a tyre and on its label: sizes, load index, speed symbol, label classes. */
package org.griplore.store.tyre;
