import type { WriteContext } from '@/lib/access/context';
import { type Failure, invalid } from '@/lib/base/result';
import { leastLabelMm, type SheetLayout, sheetProblem } from '@/lib/labels/sheet/sheet-layout';

const fieldOf = {
  'label-too-small': 'labelWidthMm',
  'label-too-wide': 'pageWidthMm',
  'label-too-high': 'pageHeightMm',
} as const;

/** What is wrong with a network's own sheet: its labels do not fit, are too small for a code, or its name is taken. */
export async function checkLabelSheet(
  { db }: WriteContext,
  sheet: SheetLayout & { readonly name: string },
  own: string,
): Promise<Failure | undefined> {
  const problem = sheetProblem(sheet);
  const { width, height } = leastLabelMm;
  if (problem === 'label-too-small') return invalid(fieldOf[problem], problem, { width, height });
  if (problem !== undefined) return invalid(fieldOf[problem], problem);
  const { name } = sheet;
  const taken = await db.labelSheet.findFirst({ where: { name, voidedAt: null, id: { not: own } } });
  return taken ? invalid('name', 'name-taken', { name }) : undefined;
}
