import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { codeForm, plainCode } from './plain-words';
import type { ReferenceKind } from './table-field';
import { shortSpeciesNames, usualMethodNames } from './usual-names';

/** `usual`: what it is called as well, where no record has that name. */
type Named = { readonly id: string; readonly names: readonly string[]; readonly usual?: readonly string[] };

const live = { voidedAt: null };

/** Records of one kind with every name they are known by; of batches and lots only those that may be meant: `wanted` are codes without any sign. */
const named: Readonly<
  Record<ReferenceKind, (context: ReadContext, wanted: readonly string[]) => Promise<readonly Named[]>>
> = {
  batch: async ({ db, actor }, wanted) => {
    const rows = await db.$queryRaw<{ id: string; code: string }[]>`
      select id::text, code from public.batch where network_id = ${actor.networkId}::uuid and voided_at is null
        and regexp_replace(upper(code), '[^[:alnum:]]', '', 'g') = any(${wanted}::text[])`;
    return rows.map(({ id, code }) => ({ id, names: [code] }));
  },
  substrate_lot: async ({ db, actor }, wanted) => {
    const rows = await db.$queryRaw<{ id: string; code: string }[]>`
      select id::text, code from public.substrate_lot where network_id = ${actor.networkId}::uuid and voided_at is null
        and regexp_replace(upper(code), '[^[:alnum:]]', '', 'g') = any(${wanted}::text[])`;
    return rows.map(({ id, code }) => ({ id, names: [code] }));
  },
  spawn_lot: async ({ db, actor }, wanted) => {
    const rows = await db.$queryRaw<{ id: string; code: string }[]>`
      select id::text, code from public.spawn_lot where network_id = ${actor.networkId}::uuid and voided_at is null
        and regexp_replace(upper(code), '[^[:alnum:]]', '', 'g') = any(${wanted}::text[])`;
    return rows.map(({ id, code }) => ({ id, names: [code] }));
  },
  site: async ({ db }) =>
    (await db.site.findMany({ where: live })).map(({ id, code, name }) => ({ id, names: [code, name] })),
  species: async ({ db }) =>
    (await db.species.findMany({ where: live })).map((one) => ({
      id: one.id,
      names: [one.code, one.nameEn, one.nameEs, one.scientificName],
      usual: shortSpeciesNames([one.nameEn, one.nameEs]),
    })),
  material: async ({ db }) =>
    (await db.material.findMany({ where: live })).map((one) => ({
      id: one.id,
      names: [one.code, one.nameEn, one.nameEs],
    })),
  method: async ({ db }) =>
    (await db.method.findMany({ where: live })).map((one) => ({
      id: one.id,
      names: [one.code, one.nameEn, one.nameEs],
      usual: usualMethodNames[one.kind],
    })),
  treatment: async ({ db }) => {
    const methods = await db.method.findMany({ where: live });
    const runs = await db.treatmentRun.findMany({ where: live, select: { id: true, code: true } });
    return [
      ...methods.map((one) => ({
        id: `method:${one.id}`,
        names: [one.code, one.nameEn, one.nameEs],
        usual: usualMethodNames[one.kind],
      })),
      ...runs.map(({ id, code }) => ({ id: `run:${id}`, names: [code] })),
    ];
  },
};

/** What a text of the column stands for: an id, null where it can be more than one record, undefined where it is none. */
export type FoundReference = (text: string) => string | null | undefined;

const written = (text: string) => text.trim().normalize('NFC').toUpperCase();

function keyed(
  rows: readonly Named[],
  keyOf: (name: string) => string,
  namesOf = ({ names }: Named): readonly string[] => names,
): ReadonlyMap<string, string | null> {
  const found = new Map<string, string | null>();
  for (const one of rows)
    for (const key of new Set(namesOf(one).map(keyOf))) {
      const { id } = one;
      const before = found.get(key);
      found.set(key, before === undefined || before === id ? id : null);
    }
  return found;
}

/**
 * Finds the records of one kind that the texts of a column name, as `cellText` reads them. A name counts as it is written, whatever its case; else
 * in its form, whatever the signs in it; else without its blanks, but only where the whole column has one form of it.
 * What no record is named is found by what such records are usually called.
 * What is kept is an answer for each text: the names by which it was found are many times as much.
 */
export async function findReferences(
  context: ReadContext,
  of: ReferenceKind,
  texts: readonly string[],
): Promise<FoundReference> {
  const bare = (text: string) => plainCode(text).replaceAll(' ', '');
  const rows = await named[of](context, [...new Set(texts.map(bare))]);
  const [exact, forms, plain] = [keyed(rows, written), keyed(rows, codeForm), keyed(rows, plainCode)];
  const usual = keyed(rows, codeForm, (one) => one.usual ?? []);
  const formOf = new Map<string, string>();
  const ofSeveralForms = new Set<string>();
  for (const text of texts) {
    const [key, form] = [plainCode(text), codeForm(text)];
    const before = formOf.get(key);
    if (before === undefined) formOf.set(key, form);
    else if (before !== form) ofSeveralForms.add(key);
  }
  const answers = new Map<string, string | null>();
  for (const text of texts) {
    const found = exact.get(written(text)) ?? forms.get(codeForm(text));
    const loose = found === undefined ? plain.get(plainCode(text)) : found;
    if (loose === undefined) {
      const called = usual.get(codeForm(text));
      if (called !== undefined) answers.set(text, called);
      continue;
    }
    answers.set(text, found === undefined && ofSeveralForms.has(plainCode(text)) ? null : loose);
  }
  return (text) => answers.get(text);
}
