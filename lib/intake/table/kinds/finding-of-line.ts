import type { Question } from '@/lib/base/result';
import type { RowValues } from '../read-row';
import { unsaid } from '../table-field';
import { lineHarvests, unitsNamed } from './notebook-line';
import { rawFinding } from './take-findings';
import { askUnsaid, assumedNote, type UnsaidFacts } from './unsaid-facts';

/** The day of the one harvest of a line; undefined where it tells of none or of several. */
function harvestDay(values: RowValues): string | undefined {
  const [first, ...others] = lineHarvests(values);
  const day = first?.values.get('weighedOn');
  return others.length === 0 && typeof day === 'string' ? day : undefined;
}

/** What the form of the finding of a line would have posted, and what stands in it that the line does not say. */
export function findingOfLine(
  values: RowValues,
  batch: string,
  language: string,
): { readonly raw: unknown; readonly questions: readonly Question[] } {
  const day = harvestDay(values);
  const said = (name: string) => (values.get(name) === unsaid ? undefined : values.get(name));
  const foundOn = said('foundOn') ?? day;
  const late = typeof foundOn === 'string' && day !== undefined && foundOn >= day;
  const facts: UnsaidFacts = {
    foundOn: said('foundOn') === undefined && day !== undefined ? day : undefined,
    sign: said('sign') === undefined ? 'other' : undefined,
    stage: said('stage') === undefined ? (late ? 'cropping' : 'colonising') : undefined,
    action: said('action') === undefined ? 'left_in_place' : undefined,
  };
  const raw = new Map<string, unknown>([
    ['batch', batch],
    ['units', said('contaminated') ?? { text: String(unitsNamed(values)), unit: null }],
    ['foundOn', foundOn],
    ['sign', said('sign') ?? facts.sign],
    ['stage', said('stage') ?? facts.stage],
    ['action', said('action') ?? facts.action],
    ['unitNumbers', said('unitNumbers')],
    ['note', assumedNote(facts, language)],
  ]);
  return { raw: rawFinding(raw), questions: askUnsaid(facts) };
}
