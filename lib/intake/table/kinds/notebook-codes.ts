import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { Question } from '@/lib/base/result';
import { codeForm } from '../plain-words';
import { cellText } from '../read-row';
import { type FoundReference, findReferences } from '../references';
import type { TakeSettings } from '../taker';

/** The codes of a notebook: which batch each names already, and how many lines name it. */
export type NotebookCodes = {
  readonly find: FoundReference;
  readonly lines: (code: string) => number;
};

/** Looks all codes of a notebook up at once, before any batch of it is started. */
export async function notebookCodes(
  context: ReadContext,
  rowsByText: TakeSettings['rowsByText'],
): Promise<NotebookCodes> {
  const texts = await rowsByText('code');
  const counts = new Map<string, number>();
  for (const [text, rows] of texts) counts.set(codeForm(text), (counts.get(codeForm(text)) ?? 0) + rows);
  return {
    find: await findReferences(context, 'batch', [...texts.keys()].map(cellText)),
    lines: (code) => counts.get(codeForm(code)) ?? 1,
  };
}

/**
 * What is asked before a batch is started with units that its lines do not tell: lines can be bags or harvests, and a 1
 * on each of several lines can be one unit of the batch or the one bag of the line.
 */
export function askUnits(said: boolean, units: number, lines: number): Question | undefined {
  if (!said) return { field: 'unitCount', code: 'intake-units-of-lines', values: { count: lines } };
  if (units === 1 && lines > 1)
    return { field: 'unitCount', code: 'intake-one-unit', values: { count: lines } };
  return undefined;
}
