import { z } from 'zod';
import type { Prisma } from '@/lib/database/generated/client';
import { contaminationSignKinds, findingActions, lossCauseKinds } from '@/lib/growing/vocabulary';
import { checkKinds } from '@/lib/records/check/check.input';
import { cropStages } from '@/lib/records/finding/finding.input';
import { date, type Filters, id, identity, note, resource, voided, voidedOf } from './resource';
import { day } from './told';

const ofBatch = { batchId: id, siteId: id };
const filters = { batch: id, site: id };
const units = z.int().min(0);
const unitNumbers = z.array(z.int()).describe('Numbers of the units, where they were written down.');
const namedUnits = { where: { voidedAt: null }, orderBy: { unitNumber: 'asc' } } as const;
const numbersOf = (row: { readonly namedUnits: readonly { readonly unitNumber: number }[] }) =>
  row.namedUnits.map(({ unitNumber }) => unitNumber);

const asked = ({ batch, site }: Filters) => ({
  ...(batch === undefined ? {} : { batchId: batch }),
  ...(site === undefined ? {} : { siteId: site }),
});

type Event = {
  readonly id: string;
  readonly revision: number;
  readonly batchId: string;
  readonly siteId: string;
  readonly note: string | null;
  readonly voidedAt: Date | null;
  readonly voidReason: string | null;
};
const event = (row: Event) => ({
  ...{ id: row.id, revision: row.revision, batchId: row.batchId, siteId: row.siteId, note: row.note },
  voided: voidedOf(row),
});

export const looks = resource({
  name: 'looks',
  one: 'a look',
  about: 'All living units of a batch looked at, nothing newly contaminated.',
  schema: z.object({ ...identity, ...ofBatch, lookedOn: date, note, voided }),
  filters,
  rows: ({ db }, where, page, given) => db.look.findMany({ where: { ...where, ...asked(given) }, ...page }),
  tell: (row) => ({ ...event(row), lookedOn: day(row.lookedOn) }),
});

export const checks = resource({
  name: 'checks',
  one: 'a check',
  about: 'The day on which a batch was seen fully colonised or with pins.',
  schema: z.object({ ...identity, ...ofBatch, checkedOn: date, kind: z.enum(checkKinds), note, voided }),
  filters,
  rows: ({ db }, where, page, given) => db.check.findMany({ where: { ...where, ...asked(given) }, ...page }),
  tell: (row) => ({ ...event(row), checkedOn: day(row.checkedOn), kind: row.kind }),
});

const findingInclude = { namedUnits } satisfies Prisma.FindingInclude;

export const findings = resource({
  name: 'findings',
  one: 'a finding',
  about: 'Units newly found contaminated; a unit counts once.',
  schema: z.object({
    ...identity,
    ...ofBatch,
    foundOn: date,
    units,
    sign: z.enum(contaminationSignKinds),
    stage: z.enum(cropStages),
    action: z.enum(findingActions),
    unitNumbers,
    note,
    voided,
  }),
  filters,
  rows: ({ db }, where, page, given) =>
    db.finding.findMany({ where: { ...where, ...asked(given) }, include: findingInclude, ...page }),
  tell: (row) => ({
    ...event(row),
    foundOn: day(row.foundOn),
    ...{ units: row.units, sign: row.sign, stage: row.stage, action: row.action },
    unitNumbers: numbersOf(row),
  }),
});

export const losses = resource({
  name: 'losses',
  one: 'a loss',
  about: 'Units lost for a cause other than contamination.',
  schema: z.object({
    ...identity,
    ...ofBatch,
    lostOn: date,
    units,
    contaminatedUnits: units.describe('How many of them had been found contaminated before.'),
    cause: z.enum(lossCauseKinds),
    unitNumbers,
    note,
    voided,
  }),
  filters,
  rows: ({ db }, where, page, given) =>
    db.loss.findMany({ where: { ...where, ...asked(given) }, include: { namedUnits }, ...page }),
  tell: (row) => ({
    ...event(row),
    lostOn: day(row.lostOn),
    ...{ units: row.units, contaminatedUnits: row.contaminatedUnits, cause: row.cause },
    unitNumbers: numbersOf(row),
  }),
});
