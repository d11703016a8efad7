/** Small samples of one day: means and deviations, a straight line, an outlier rule. */
package org.griplore.ingest.reduce.sample;
