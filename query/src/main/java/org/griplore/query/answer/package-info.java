/**
 * What every answer looks like, whoever asks: the question in words, rows, what was left out, what
 * to be careful about, and the sources. Nothing here knows how an answer is shown.
 */
package org.griplore.query.answer;
