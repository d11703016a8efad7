/**
 * What any file a tester has is turned into: grids of cells with positions. Nothing here knows
 * about tyres.
 *
 * <p>{@link org.griplore.ingest.grid.Grid} is the single thing handed on to those who recognise
 * tables, whatever the file was. Its contract:
 *
 * <ul>
 *   <li>Rows stand in the order of the source, cells in the order of their columns, each with the
 *       row and column a person counts. Empty cells are not there; a text is never blank and has no
 *       blanks at its ends.
 *   <li>A text is what was written, without what only decorates it: raised marks, strike-outs,
 *       comments and number formats stand in the cell's {@link org.griplore.ingest.grid.CellLook}.
 *   <li>What a source hides is there and marked ({@link org.griplore.ingest.grid.Grid#shows}); who
 *       reads the grid takes what is visible before it.
 *   <li>A grid that is only a draft says why. What was left out is a finding of the {@link
 *       org.griplore.ingest.grid.Content}, with its cell.
 * </ul>
 *
 * <p>The rooms: {@code source} opens a file and knows by its content which reader takes it, {@code
 * text}, {@code markup}, {@code json}, {@code workbook}, {@code print} and {@code packed} hold the
 * readers. A room knows this package, {@code text} and {@code packed}; only {@code source} knows
 * all rooms.
 *
 * <p>Choices that are not obvious:
 *
 * <ul>
 *   <li><b>Rows and columns</b> count from 1 as a person counts them: the physical line of a text
 *       (of a record in quotes, its first), the sheet's row, the row of a page's table, the line of
 *       a JSON value. Empty cells are left out, and blanks around a text; nothing else is changed.
 *   <li><b>Numbers of a workbook</b> keep their full double beside the text. The text keeps fifteen
 *       digits, also those a format hides: 0.95312 shown as 95.3 % is {@code 95.312%}. A time of
 *       day is text ({@code 1:23.4}), because a part of a day is no figure anybody measured.
 *   <li><b>Merged cells</b> keep their text at the top left; {@link
 *       org.griplore.ingest.grid.Grid#spreadAcross} repeats it over its columns.
 *   <li><b>Encoding</b>: mark, zeros (UTF-16), UTF-8, a page's own word, Windows-1252. Text that is
 *       mostly UTF-8 with a broken byte is refused, not read as something else.
 *   <li><b>Markdown with a table</b> is tables like a page, the text between them their preamble;
 *       without one it is prose.
 *   <li><b>Our own reader of delimited text</b>: see {@link
 *       org.griplore.ingest.grid.text.RecordReader}.
 *   <li><b>Limits</b> (a row of 10 million characters or 16,384 columns, a workbook of 512 MB or
 *       200 times its packed size, 5 million cells of any source that is held in memory, a page of
 *       32 MB, a page's table of 500,000 spanned places, notes of 500,000 lines) are counted while
 *       reading, never believed from headers.
 * </ul>
 */
package org.griplore.ingest.grid;
