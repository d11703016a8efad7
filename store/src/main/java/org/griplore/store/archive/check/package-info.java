/** Whether the database is whole. */
package org.griplore.store.archive.check;
