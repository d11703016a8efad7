/** Makes words for people of what is kept as codes, and finds the code of words that have one. */
package org.griplore.store.wording;
