/** The plots of answers: data here, shapes in {@code charts}. */
package org.griplore.ui.web.chart;
