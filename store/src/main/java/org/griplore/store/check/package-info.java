/** Verifies an archive as a whole: database, originals and text index. */
package org.griplore.store.check;
