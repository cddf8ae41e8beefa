import { Client } from 'pg';
import { expect, it, vi } from 'vitest';
import { readAs } from '@/lib/access/scoped-db';
import { testDatabase } from '../../support/database';
import { growers } from '../../support/growers';
import { shed } from '../../support/shed';
import { bring } from './bring';

vi.setConfig({ testTimeout: 120_000 });
const { superuser } = await testDatabase();
const now = new Date('2026-07-20T15:00:00Z');

it('a row that the database alone refuses is named, and those written with it are written all the same', async () => {
  const people = await growers(superuser);
  await shed(people);
  const client = new Client({ connectionString: superuser });
  await client.connect();
  await client.query(`create function public.refuse_one() returns trigger language plpgsql as $$
    begin if new.code = 'B-3' then raise exception 'refused' using errcode = 'PB002'; end if; return new; end $$;
    create trigger refuse_one before insert on public.batch for each row execute function public.refuse_one()`);
  await client.end();
  const names = ['Batch', 'Species', 'Container', 'Bags', 'Date', 'Substrate', 'Treatment'];
  const row = (code: string) => [code, 'Pleurotus ostreatus', 'bag', '9', '2026-05-01', 'STRAW-1', 'steam'];
  const rows = [names, ...['B-1', 'B-2', 'B-3', 'B-4', 'B-1'].map(row)];
  const asked = { kind: 'batches', siteId: people.millLane, now } as const;
  const file = await bring(people.member, asked, rows.map((cells) => cells.join(',')).join('\n'));
  expect((await file.check()).counts).toMatchObject({ new: 3, needs: 2 });
  expect(await file.wrong()).toEqual([
    [4, '', 'rule-before-inoculation'],
    [6, 'code', 'code-taken'],
  ]);
  expect((await file.add()).counts).toMatchObject({ added: 3 });
  const codes = await readAs(people.member, ({ db }) =>
    db.batch.findMany({ where: { origin: 'file_import' }, select: { code: true }, orderBy: { code: 'asc' } }),
  );
  expect(codes.map(({ code }) => code)).toEqual(['B-1', 'B-2', 'B-4']);
});
