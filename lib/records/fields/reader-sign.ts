import { readerRegion } from '@/lib/base/reader-region';
import type { DecimalSign } from '@/lib/growing/decimal-reading';
import { decimalSignOf } from '@/lib/growing/format-quantity';

/** The decimal sign of the reader whose form is being read; null when unknown, so that two readings are asked about. */
export function readerSign(): DecimalSign | null {
  const region = readerRegion();
  return region === undefined ? null : decimalSignOf(region);
}
