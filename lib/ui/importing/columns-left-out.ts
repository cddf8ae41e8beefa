import type { IntakeView } from '@/lib/intake/table/view-file';

/** Columns that hold something of which nothing is brought in: those with a heading, and those of the first rows without one. */
export function columnsLeftOut({ layout, sample }: Pick<IntakeView, 'layout' | 'sample'>): readonly number[] {
  return layout.columns.flatMap(({ field }, index) => {
    const says = layout.headers[index]?.trim() || sample.some(({ cells }) => cells[index]?.trim());
    return field === null && says ? [index] : [];
  });
}
