import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { codeForm, plainCode } from './plain-words';
import type { ReferenceKind } from './table-field';

type Named = { readonly id: string; readonly names: readonly string[] };

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
    })),
  treatment: async ({ db }) => {
    const methods = await db.method.findMany({ where: live });
    const runs = await db.treatmentRun.findMany({ where: live, select: { id: true, code: true } });
    return [
      ...methods.map((one) => ({ id: `method:${one.id}`, names: [one.code, one.nameEn, one.nameEs] })),
      ...runs.map(({ id, code }) => ({ id: `run:${id}`, names: [code] })),
    ];
  },
};

/** What a text of the column stands for: an id, null where it can be more than one record, undefined where it is none. */
export type FoundReference = (text: string) => string | null | undefined;

const written = (text: string) => text.trim().normalize('NFC').toUpperCase();

function keyed(rows: readonly Named[], keyOf: (name: string) => string): ReadonlyMap<string, string | null> {
  const found = new Map<string, string | null>();
  for (const { id, names } of rows)
    for (const key of new Set(names.map(keyOf))) {
      const before = found.get(key);
      found.set(key, before === undefined || before === id ? id : null);
    }
  return found;
}

/**
 * Finds the records of one kind that the texts of a column name, as `cellText` reads them. A name counts as it is written, whatever its case; else
 * in its form, whatever the signs in it; else without its blanks, but only where the whole column has one form of it.
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
    if (loose === undefined) continue;
    answers.set(text, found === undefined && ofSeveralForms.has(plainCode(text)) ? null : loose);
  }
  return (text) => answers.get(text);
}

/** Records of one kind to choose from where a name was not found: value and the name first known by. */
export async function offerReferences(
  context: ReadContext,
  of: ReferenceKind,
): Promise<readonly { value: string; label: string }[]> {
  const spanish = context.actor.language === 'es';
  if (of === 'batch' || of === 'substrate_lot' || of === 'spawn_lot') return offerCodes(context, of);
  const rows = await named[of](context, []);
  return rows
    .map(({ id, names }) => ({
      value: id,
      label: (of === 'site' ? names[1] : names[spanish ? 2 : 1]) ?? names[0] ?? '',
    }))
    .sort((a, b) => a.label.localeCompare(b.label));
}

const mostOffered = 500;

async function offerCodes({ db }: ReadContext, of: 'batch' | 'substrate_lot' | 'spawn_lot') {
  const newest = { where: live, orderBy: { id: 'desc' as const }, take: mostOffered };
  const rows =
    of === 'batch'
      ? await db.batch.findMany({ ...newest, select: { id: true, code: true } })
      : of === 'substrate_lot'
        ? await db.substrateLot.findMany({ ...newest, select: { id: true, code: true } })
        : await db.spawnLot.findMany({ ...newest, select: { id: true, code: true } });
  return rows
    .map(({ id, code }) => ({ value: id, label: code }))
    .sort((a, b) => a.label.localeCompare(b.label));
}
