/** Options of questions: defined once, checked once, the same in command line and address. */
package org.griplore.query.option;
