/**
 * How a page is made of an answer: its form, its table, its links, its citation; and the pages of
 * every question.
 */
package org.griplore.ui.web.page;
