import { parseArgs } from 'node:util';
import { z } from 'zod';
import { disconnect } from '@/lib/database/client';
import { connectTo } from '@/lib/database/startup-check';
import { todayInZone } from '@/lib/growing/calendar-date';
import { demoPassword } from '../story/people';
import { makeNetwork, storyZone } from '../write/make-network';
import { eventStatements } from './event-tables';
import { numberFunctions } from './number-functions';
import { planTables } from './plan-tables';
import { stockStatements } from './record-tables';

/**
 * `npm run seed:scale -- --batches 100000 --sites 1000`: one large invented network in the database of
 * DATABASE_OWNER_URL, for measuring. Ten years up to today, deterministic but for that day. Rows are written as tables
 * and not through the commands: no history, and what is kept of batches is rebuilt at the end.
 */
const { values } = parseArgs({ options: { batches: { type: 'string' }, sites: { type: 'string' } } });
const size = z.coerce.number().int().positive();
const batches = size.parse(values.batches ?? '100000');
const sites = size.parse(values.sites ?? '1000');

const email = 'large@network.example';
const written = [
  ...['site', 'substrate_lot', 'spawn_lot', 'treatment_run', 'treatment_reading', 'batch', 'batch_component'],
  ...['spawn_share', 'finding', 'look', 'loss', 'weighing', 'weighing_line'],
];

try {
  const { networkId } = await makeNetwork({
    name: 'Large network',
    code: 'large',
    coordinator: { name: 'Alder Finch', email },
    password: demoPassword,
  });
  const owner = await connectTo('DATABASE_OWNER_URL', process.env.DATABASE_OWNER_URL);
  const plan = { networkId, batches, sites, days: 3650, today: todayInZone(storyZone, new Date()) };
  const step = async (name: string, sql: string) => {
    const start = performance.now();
    await owner.query(sql);
    console.log(`${((performance.now() - start) / 1000).toFixed(1).padStart(7)} s  ${name}`);
  };
  await owner.query('begin');
  // Bypasses row policies; the owner of the tables does not, and turns off the triggers instead.
  for (const table of written) await owner.query(`alter table public.${table} disable trigger user`);
  // Where the operator allows it, the keys of rows that were made to fit are not looked up again one by one.
  await owner.query(`select set_config('session_replication_role', 'replica', true)
    where has_parameter_privilege('session_replication_role', 'SET')`);
  await owner.query(`do $$ begin
    execute format('grant temporary on database %I to pinset_definer', current_database()); end $$`);
  await owner.query('set local role pinset_definer');
  await owner.query(numberFunctions);
  await step('plan', planTables(plan));
  for (const sql of [...stockStatements(plan), ...eventStatements(plan)])
    await step(/public\.(\w+)/.exec(sql)?.[1] ?? '', sql);
  await owner.query('reset role');
  await owner.query(`do $$ begin
    execute format('revoke temporary on database %I from pinset_definer', current_database()); end $$`);
  for (const table of written) await owner.query(`alter table public.${table} enable trigger user`);
  await owner.query('commit');
  await step('vacuum analyze', 'vacuum analyze');
  await step('kept outcomes', `select app.rebuild_outcomes('${networkId}')`);
  await step('vacuum analyze', 'vacuum analyze');
  await owner.end();
  console.log(`Sign in as ${email}, ${demoPassword}`);
} finally {
  await disconnect();
}
