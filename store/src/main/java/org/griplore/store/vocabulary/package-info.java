/** The trade's words as immutable types: what a test report says, and where each value stands. */
package org.griplore.store.vocabulary;
