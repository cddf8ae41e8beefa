import { readFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import Ajv from 'ajv';
import addFormats from 'ajv-formats';
import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readSnapshot, writeAs } from '@/lib/access/scoped-db';
import { columnText, tableTexts } from '@/lib/export/package/column-texts';
import { loadRows } from '@/lib/export/package/load-rows';
import { type OpenedPackage, openPackage } from '@/lib/export/package/open-package';
import { packageTableNames } from '@/lib/export/package/package-tables';
import { readColumns } from '@/lib/export/package/read-columns';
import { commonTexts } from '@/lib/export/package/texts/common-texts';
import { writePackage } from '@/lib/export/package/write-package';
import { ucumCodes } from '@/lib/growing/ucum-codes';
import { testDatabase } from '../support/database';
import { emptyNetwork } from './empty-network';
import { type GrownWorld, grownWorld } from './grown-world';
import { leftOut } from './left-out-tables';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
const folder = await mkdtemp(path.join(tmpdir(), 'pinset-test-'));
const file = path.join(folder, 'network.zip');
let world: GrownWorld;
let opened: OpenedPackage;

const options = {
  licence: 'CC-BY-4.0',
  softwareVersion: '0.0.0',
  now: new Date('2026-07-20T15:00:00Z'),
} as const;

beforeAll(async () => {
  await admin.connect();
  world = await grownWorld(superuser);
  await readSnapshot(world.people.coordinator, (context) => writePackage(context, file, options));
  opened = await openPackage(file);
}, 120_000);
afterAll(async () => {
  opened?.close();
  await admin.end();
  await rm(folder, { recursive: true });
});

type Descriptor = {
  licenses: { name: string }[];
  resources: {
    path: string;
    schema: {
      fields: {
        name: string;
        type: string;
        description: string;
        unit?: string;
        categories?: { value: string }[];
        constraints: { required?: boolean };
        missingValues?: { value: string; label: string }[];
      }[];
      foreignKeys?: { fields: string[]; reference: { resource?: string; fields: string[] } }[];
    };
  }[];
};

/** The descriptor as it stands in the file, without our own reading of it. */
async function descriptor(): Promise<Descriptor> {
  const { descriptorText } = await import('./descriptor-text');
  return JSON.parse(await descriptorText(file)) as Descriptor;
}

describe('the archive of a network', () => {
  it('has a descriptor that the published profile of Data Package 2.0 accepts', async () => {
    const read = (name: string) =>
      JSON.parse(
        readFileSync(path.join(import.meta.dirname, 'data-package-2.0', `${name}.json`), 'utf8'),
      ) as object;
    const ajv = addFormats(new Ajv({ strict: false, allErrors: true }));
    const described = await descriptor();
    const wholePackage = ajv.compile(read('datapackage'));
    expect(wholePackage(described), JSON.stringify(wholePackage.errors?.slice(0, 5))).toBe(true);
    const schema = ajv.compile(read('tableschema'));
    for (const resource of described.resources)
      expect(schema(resource.schema), `${resource.path} ${JSON.stringify(schema.errors?.slice(0, 5))}`).toBe(
        true,
      );
    expect(wholePackage({ ...described, resources: [] })).toBe(false);
    expect(described.licenses).toEqual([expect.objectContaining({ name: 'CC-BY-4.0' })]);
  });

  it('describes every column, its unit where it is a quantity, and what a blank means', async () => {
    for (const { path: at, schema } of (await descriptor()).resources)
      for (const field of schema.fields) {
        const where = `${at} ${field.name}`;
        expect(columnText(path.basename(at, '.csv'), field.name), where).toBeDefined();
        expect(field.description.length, where).toBeGreaterThan(12);
        if (field.unit !== undefined) expect(Object.values(ucumCodes), where).toContain(field.unit);
        else if (['integer', 'number'].includes(field.type))
          expect(
            ['value', 'taxon_id', 'bed_area_cm2'].includes(field.name) || field.name.endsWith('_minor'),
            where,
          ).toBe(true);
        expect(field.constraints.required === true || field.missingValues?.[0]?.label, where).toBeTruthy();
      }
  });

  it('has no text for a column that is gone', async () => {
    const columns = new Map<string, string[]>();
    for (const name of [...packageTableNames, 'network'])
      columns.set(
        name,
        await readSnapshot(world.people.coordinator, async (context) =>
          (await readColumns(context, name)).columns.map(({ column }) => column),
        ),
      );
    const gone = Object.entries(tableTexts).flatMap(([table, texts]) =>
      Object.keys(texts)
        .filter((column) => !columns.get(table)?.includes(column))
        .map((column) => `${table}.${column}`),
    );
    const all = new Set([...columns.values()].flat());
    // Columns of the network that a later migration brings are described beforehand.
    expect(gone.filter((one) => !one.startsWith('network.'))).toEqual([]);
    expect(Object.keys(commonTexts).filter((column) => !all.has(column))).toEqual([]);
  });

  it('has every table of the network, or a reason why not', async () => {
    const { rows } = await admin.query<{ name: string }>(
      `select relname::text as name from pg_class c join pg_namespace n on n.oid = c.relnamespace
       where n.nspname = 'public' and c.relkind in ('r', 'p') order by 1`,
    );
    const told = new Set<string>([...packageTableNames, ...Object.values(leftOut).flat()]);
    expect(rows.map(({ name }) => name).filter((name) => !told.has(name))).toEqual([]);
  });

  it('holds only values of the types, categories and keys that it declares', async () => {
    const ids = new Map<string, Set<string>>();
    const patterns: Record<string, RegExp> = {
      integer: /^-?\d+$/,
      number: /^-?\d+(\.\d+)?$/,
      boolean: /^(true|false)$/,
      date: /^\d{4}-\d{2}-\d{2}$/,
      datetime: /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}\.\d{3}Z$/,
      object: /^\{.*\}$/s,
      array: /^\[.*\]$/s,
      string: /./s,
    };
    for (const { path: at, schema } of (await descriptor()).resources) {
      const name = path.basename(at, '.csv').replaceAll('_', '-');
      const rows: Record<string, string | null>[] = [];
      for await (const part of opened.rows(at)) rows.push(...part);
      ids.set(name, new Set(rows.map((row) => row.id ?? '')));
      expect(ids.get(name)?.size).toBe(rows.length);
      for (const row of rows) {
        for (const field of schema.fields) {
          const cell = row[field.name] ?? null;
          if (cell === null) expect(field.constraints.required, `${at} ${field.name}`).not.toBe(true);
          else {
            expect(cell, `${at} ${field.name}`).toMatch(patterns[field.type] ?? /^$/);
            if (field.categories) expect(field.categories.map(({ value }) => value)).toContain(cell);
          }
        }
        for (const key of schema.foreignKeys ?? []) {
          const at = key.reference.fields.indexOf('id');
          const value = row[key.fields[at] ?? ''] ?? null;
          if (value !== null) expect(ids.get(key.reference.resource ?? name)?.has(value)).toBe(true);
        }
      }
    }
    expect(ids.get('weighing-line')?.size).toBe(1);
    expect(ids.get('condition-reading')?.size).toBe(2);
  });

  it('names nobody', async () => {
    const { rows } = await admin.query<{ name: string; email: string; id: string }>(
      'select name, email, person_id::text as id from person_contact',
    );
    let text = JSON.stringify(await descriptor());
    for (const { path: at } of (await descriptor()).resources)
      for await (const part of opened.rows(at)) text += JSON.stringify(part);
    for (const { name, email, id } of rows)
      for (const one of [name, email, id]) expect(text).not.toContain(one);
  });

  it('is loaded into an equal network: same rows, sums and values in every column', async () => {
    const actor = await emptyNetwork('COPY');
    const result = await writeAs(actor, { origin: 'file_import' }, (context) => loadRows(context, opened));
    expect(result.kind).toBe('ok');
    for (const name of packageTableNames) {
      const without = `to_jsonb(t) - 'network_id' - 'created_by_id' - 'started_by_id'`;
      const { rows } = await admin.query<{ network: string; n: number; all: string }>(
        `select network_id::text as network, count(*)::int as n, jsonb_agg(${without} order by id)::text as all
         from public."${name}" t where network_id = any ($1) group by 1`,
        [[world.people.coordinator.networkId, actor.networkId]],
      );
      const [first, second] = rows;
      expect(rows.length === 0 || rows.length === 2, name).toBe(true);
      expect(second?.all, name).toBe(first?.all);
    }
    const { rows: sums } = await admin.query(
      'select sum(fresh_grams)::int as grams from weighing_line group by network_id',
    );
    expect(sums).toEqual([{ grams: 3000 }, { grams: 3000 }]);
  });

  it('is given up with the reason when a table cannot be read', async () => {
    const broken = path.join(folder, 'broken.zip');
    const writing = readSnapshot(world.people.coordinator, ({ db, actor }) => {
      const unread = Object.create(db, {
        $queryRawUnsafe: {
          value: (sql: string, ...values: unknown[]) =>
            sql.includes('"finding"')
              ? Promise.reject(new Error('lost'))
              : db.$queryRawUnsafe(sql, ...values),
        },
      }) as typeof db;
      return writePackage({ db: unread, actor }, broken, options);
    });
    await expect(writing).rejects.toThrow('lost');
  });

  it('is not loaded into a network that has something, nor by a member', async () => {
    for (const actor of [world.people.coordinator, world.people.member])
      expect((await writeAs(actor, {}, (context) => loadRows(context, opened))).kind).toBe('not-found');
  });
});
