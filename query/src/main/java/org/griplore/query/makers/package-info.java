/** What figures that makers supplied have been worth beside those of others. */
package org.griplore.query.makers;
