/** What names mean and how models descend, from sources and decisions together. */
package org.griplore.store.archive.names;
