import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { FieldError } from '@/lib/base/result';
import { choicesOf, type FieldChoices } from './field-choices';
import { fieldsOfKind } from './kinds/fields-of-kind';
import { likelyFirst } from './likely-first';
import { openFile } from './open-file';
import { choiceKey, type OpenFile } from './rows-to-take';
import { sitesOfTable } from './sites-of-table';
import { textsOfRows } from './texts-of-rows';

/** A text that stands for nothing known, with how many rows say it and what it may stand for. */
export type UnknownText = {
  readonly key: string;
  readonly field: string;
  readonly text: string;
  readonly rows: number;
};

/** A question that many rows raise, with one of them as an example. */
export type OpenQuestion = { readonly rows: number; readonly line: number; readonly question: FieldError };

export type OpenPoints = {
  readonly unknown: readonly UnknownText[];
  /** How many more there are than these. */
  readonly unknownMore: number;
  /** Texts of the table for which a person chose what they stand for, with what that is. */
  readonly chosen: readonly (Omit<UnknownText, 'rows'> & { readonly value: string })[];
  /** What each of these texts can be chosen to mean, by its key; what it likely means first. */
  readonly choices: ReadonlyMap<string, FieldChoices>;
  readonly questions: readonly OpenQuestion[];
};

const mostUnknown = 40;

/** Texts in the columns of the table that a person said something of, here or in an earlier table of the site. */
async function chosenTexts(context: ReadContext, file: OpenFile): Promise<OpenPoints['chosen']> {
  const names = new Set(Object.keys(file.choices).map((key) => key.split(' ', 1)[0] ?? ''));
  const found = new Map<string, OpenPoints['chosen'][number]>();
  for (const field of names)
    for (const [text = ''] of await textsOfRows(context, file, [field])) {
      const key = choiceKey(field, text);
      const value = file.choices[key];
      if (value !== undefined) found.set(key, { key, field, text, value });
    }
  return [...found.values()].slice(0, mostUnknown);
}

/** What can be settled for many rows at once: texts that were not found, and questions of one kind. */
export async function openPoints(context: ReadContext, id: string): Promise<OpenPoints> {
  const file = await openFile(context, id);
  if (!file) return { unknown: [], unknownMore: 0, chosen: [], choices: new Map(), questions: [] };
  const { db, actor } = context;
  const fields = fieldsOfKind[file.kind];
  const written = await db.$queryRaw<{ target: string; text: string; rows: number }[]>`
    select p ->> 'field' as target, p -> 'values' ->> 'text' as text, count(*)::int as rows
    from public.intake_row r, jsonb_array_elements(r.problems) p
    where r.network_id = ${actor.networkId}::uuid and r.file_id = ${file.id}::uuid and r.state = 'needs'
      and p ->> 'code' in ('intake-unknown', 'intake-twice')
    group by 1, 2 order by 3 desc, 2`;
  const questions = await db.$queryRaw<{ rows: number; line: number; question: FieldError }[]>`
    select count(*)::int as rows, min(r.line)::int as line,
      (array_agg(jsonb_strip_nulls(p - 'asks') order by r.line))[1] as question
    from public.intake_row r, jsonb_array_elements(r.problems) p
    where r.network_id = ${actor.networkId}::uuid and r.file_id = ${file.id}::uuid and r.state = 'needs'
      and (p ->> 'asks')::boolean
    group by p ->> 'code' order by 1 desc`;
  const unknown = written.slice(0, mostUnknown).flatMap(({ target, text, rows }) => {
    const field = fields.find((one) => one.target === target);
    return field ? [{ key: choiceKey(field.name, text), field: field.name, text, rows }] : [];
  });
  const chosen = await chosenTexts(context, file);
  const asked = new Set([...unknown, ...chosen].map(({ field }) => field));
  const sites = asked.size === 0 ? [] : await sitesOfTable(context, file);
  const choices = new Map<string, FieldChoices>();
  for (const name of asked) {
    const field = fields.find((one) => one.name === name);
    const offered = field && (await choicesOf(context, field, sites));
    for (const { key, text } of [...unknown, ...chosen].filter((one) => one.field === name)) {
      const likely = likelyFirst(text, offered);
      if (likely) choices.set(key, likely);
    }
  }
  return { unknown, unknownMore: written.length - unknown.length, chosen, choices, questions };
}
