/**
 * Measurements that anyone can repeat, each against a stated peer in the same run: {@code mvn -q
 * -Pbench -DskipTests -Dbench=org.griplore.ui.bench.LongTableBench verify}.
 */
package org.griplore.ui.bench;
