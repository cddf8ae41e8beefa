import 'server-only';
import { createHash } from 'node:crypto';
import { z } from 'zod';
import type { Actor } from '@/lib/access/actor';
import type { ReadContext } from '@/lib/access/context';
import { writeAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { readerLocale } from '@/lib/base/reader-locale';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { decimalSignOf } from '@/lib/growing/format-quantity';
import { type RecordTableKind, recordTableKinds } from '@/lib/growing/record-table-layout';
import { asRemembered, guessRecordLayout, type UsualWriting, usualAsRemembered } from './guess-layout';
import { fieldsOfKind } from './kinds/fields-of-kind';
import { storedLayout } from './layout-input';
import { readTable } from './read-table';
import { rememberedChoices } from './remembered-choices';
import { storeRows } from './store-rows';

export const mostBytes = 20_000_000;

const asked = z.object({
  kind: z.enum(recordTableKinds),
  siteId: z.uuid().nullable(),
  fileName: z.string().max(500),
});

/** How the reader writes, for what a table does not tell. */
export function usualWriting(actor: Actor): UsualWriting {
  const us = actor.region.endsWith('-US');
  return {
    dateOrder: us ? 'mdy' : 'dmy',
    decimal: decimalSignOf(readerLocale(actor)) === ',' ? 'comma' : 'point',
    units: [actor.massUnit, actor.volumeUnit === 'gallon' ? 'gal' : 'L', actor.temperatureUnit],
  };
}

/** The layout of the last table of the same kind for the same site that somebody checked. */
async function remembered({ db }: ReadContext, kind: RecordTableKind, siteId: string | null) {
  const last = await db.intakeFile.findFirst({
    where: { kind, siteId, state: { in: ['checked', 'adding', 'added'] } },
    orderBy: { id: 'desc' },
    select: { layout: true },
  });
  return last ? storedLayout(last.layout) : undefined;
}

/** Keeps a file as it came, with the text of its rows and how it seems to be written. Nothing is taken in yet. */
export async function keepFile(
  actor: Actor,
  raw: { readonly kind: unknown; readonly siteId: unknown; readonly fileName: unknown },
  bytes: Uint8Array<ArrayBuffer>,
): Promise<Result<{ id: string }>> {
  const input = asked.safeParse(raw);
  if (actor.role === 'funder') return notFound;
  if (!input.success) return invalid('kind', 'missing-choice');
  const { kind, siteId } = input.data;
  // Names and addresses of people are kept for coordinators only.
  if (kind === 'people' && actor.role !== 'coordinator') return notFound;
  if (bytes.length === 0) return invalid('file', 'missing-table');
  if (bytes.length > mostBytes) return invalid('file', 'table-too-large', { max: mostBytes / 1_000_000 });
  const read = await readTable(bytes, {});
  if (typeof read === 'string') return invalid('file', read);
  const guess = (usual: UsualWriting) =>
    guessRecordLayout(read.rows, fieldsOfKind[kind], read.written, usual);
  return writeAs(actor, { origin: 'file_import', longestMilliseconds: 120_000 }, async (context) => {
    const { db } = context;
    if (siteId !== null && !(await db.site.findFirst({ where: { id: siteId, voidedAt: null } })))
      return invalid('siteId', 'not-an-option');
    const before = await remembered(context, kind, siteId);
    const usual = usualAsRemembered(usualWriting(actor), guess(usualWriting(actor)), before);
    const layout = asRemembered(guess(usual), before);
    const id = newId();
    await db.intakeFile.create({
      data: {
        networkId: actor.networkId,
        ...{ id, siteId, kind, layout },
        choices: await rememberedChoices(context, kind, siteId),
        fileName: input.data.fileName.replace(/\p{Cc}/gu, '').slice(0, 200) || '-',
        byteCount: bytes.length,
        sha256: createHash('sha256').update(bytes).digest('hex'),
        createdById: actor.personId,
      },
    });
    await db.intakeContent.create({ data: { networkId: actor.networkId, id, content: bytes } });
    const rowCount = await storeRows(context, id, read.rows, layout);
    await db.intakeFile.updateMany({ where: { id }, data: { rowCount, totalCount: rowCount } });
    return ok({ id });
  });
}
