import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { asCalendarDate } from '../fields/stored-date';
import { countFact, dateFact, type Facts, massFact, textFact, unitNumbersFact } from './entry-fact';

const named = { namedUnits: { where: { voidedAt: null }, select: { unitNumber: true } } } as const;
const numbersOf = (row: { readonly namedUnits: readonly { readonly unitNumber: number }[] }) =>
  unitNumbersFact(row.namedUnits.map(({ unitNumber }) => unitNumber));

async function weighingFacts({ db }: ReadContext, id: string): Promise<Facts | undefined> {
  const row = await db.weighing.findFirst({
    where: { id, voidedAt: null },
    include: {
      lines: {
        where: { voidedAt: null },
        include: { batch: { select: { code: true } } },
        orderBy: { id: 'asc' },
      },
      destinations: { where: { voidedAt: null } },
    },
  });
  if (!row) return undefined;
  const placed = (where: string) =>
    massFact(row.destinations.find(({ destination }) => destination === where)?.grams ?? null);
  return new Map([
    ['weighedOn', dateFact(asCalendarDate(row.weighedOn))],
    ['fresh', massFact(row.freshGrams)],
    ...row.lines.flatMap((line, index) => [
      [`lines.${index}.batchId`, textFact(line.batch.code)] as const,
      [`lines.${index}.flush`, countFact(line.flush)] as const,
      ...(row.lines.length > 1 ? [[`lines.${index}.fresh`, massFact(line.freshGrams)] as const] : []),
    ]),
    ['trimState', { kind: 'word', group: 'trimState', word: row.trimState }],
    ...(['sold', 'given', 'kept', 'discarded'] as const).map((where) => [where, placed(where)] as const),
    ['grade', textFact(row.grade)],
    ['note', textFact(row.note)],
  ]);
}

async function findingFacts({ db }: ReadContext, id: string): Promise<Facts | undefined> {
  const row = await db.finding.findFirst({ where: { id, voidedAt: null }, include: named });
  if (!row) return undefined;
  return new Map([
    ['foundOn', dateFact(asCalendarDate(row.foundOn))],
    ['units', countFact(row.units)],
    ['sign', { kind: 'word', group: 'contaminationSign', word: row.sign }],
    ['stage', { kind: 'word', group: 'cropStage', word: row.stage }],
    ['action', { kind: 'word', group: 'findingAction', word: row.action }],
    ['unitNumbers', numbersOf(row)],
    ['note', textFact(row.note)],
  ]);
}

async function lossFacts({ db }: ReadContext, id: string): Promise<Facts | undefined> {
  const row = await db.loss.findFirst({ where: { id, voidedAt: null }, include: named });
  if (!row) return undefined;
  return new Map([
    ['lostOn', dateFact(asCalendarDate(row.lostOn))],
    ['units', countFact(row.units)],
    ['contaminatedUnits', countFact(row.contaminatedUnits)],
    ['cause', { kind: 'word', group: 'lossCause', word: row.cause }],
    ['unitNumbers', numbersOf(row)],
    ['note', textFact(row.note)],
  ]);
}

async function checkFacts({ db }: ReadContext, id: string): Promise<Facts | undefined> {
  const row = await db.check.findFirst({ where: { id, voidedAt: null } });
  if (!row) return undefined;
  return new Map([
    ['kind', { kind: 'word', group: 'checkKind', word: row.kind }],
    ['checkedOn', dateFact(asCalendarDate(row.checkedOn))],
    ['note', textFact(row.note)],
  ]);
}

async function lookFacts({ db }: ReadContext, id: string): Promise<Facts | undefined> {
  const row = await db.look.findFirst({ where: { id, voidedAt: null } });
  if (!row) return undefined;
  return new Map([
    ['lookedOn', dateFact(asCalendarDate(row.lookedOn))],
    ['note', textFact(row.note)],
  ]);
}

async function readingFacts({ db }: ReadContext, id: string): Promise<Facts | undefined> {
  const row = await db.treatmentReading.findFirst({ where: { id, voidedAt: null } });
  if (!row) return undefined;
  return new Map([
    ['celsius', textFact(row.celsius === null ? null : `${Number(row.celsius)} °C`)],
    ['ph', textFact(row.ph === null ? null : String(Number(row.ph)))],
  ]);
}

/** What a record in the database says, by kind of the entry that made it. */
export const storedFacts = {
  weighing: weighingFacts,
  finding: findingFacts,
  loss: lossFacts,
  check: checkFacts,
  look: lookFacts,
  reading: readingFacts,
} as const;
