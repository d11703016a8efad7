/** What people and {@code export} read: the views, with what each column means. */
package org.griplore.store.archive.views;
