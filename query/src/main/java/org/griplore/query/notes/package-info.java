/** Finding past notes by their words. */
package org.griplore.query.notes;
