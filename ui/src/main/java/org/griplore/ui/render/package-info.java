/**
 * One answer, many renderings: terminal table, JSON, CSV, Markdown, HTML, workbook. They lay out
 * what an answer says and compute nothing.
 */
package org.griplore.ui.render;
