/** The sheets of workbooks. */
package org.griplore.ingest.grid.workbook;
