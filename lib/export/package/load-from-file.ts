/**
 * `npm run load-package -- FILE CODE NAME EMAIL`: makes a network of its own from an archive. CODE is the new network's
 * short code; NAME and EMAIL are its first coordinator, whose password is printed once. Run by the operator, with
 * DATABASE_URL and DATABASE_OWNER_URL.
 */
import { writeAs } from '@/lib/access/scoped-db';
import { disconnect } from '@/lib/database/client';
import { loadRows } from './load-rows';
import { newNetwork } from './new-network';
import { openPackage } from './open-package';

const [file, code, name, email] = process.argv.slice(2);
if (!file || !code || !name || !email) {
  console.error('Say which: npm run load-package -- FILE CODE NAME EMAIL');
  process.exit(2);
}
try {
  const opened = await openPackage(file);
  const { network } = opened.descriptor;
  const facts = {
    ...{ name: network.name ?? code, code },
    timeZone: network.time_zone ?? 'UTC',
    region: network.region ?? 'en-US',
  };
  const { actor, password } = await newNetwork(facts, { name, email });
  const options = { origin: 'file_import', longestMilliseconds: 60 * 60_000 } as const;
  const result = await writeAs(actor, options, (context) => loadRows(context, opened));
  opened.close();
  if (result.kind !== 'ok') throw new Error(JSON.stringify(result));
  const rows = Object.values(result.value).reduce((sum, count) => sum + count, 0);
  console.log(`${facts.name} (${code}): ${rows} rows in ${Object.keys(result.value).length} tables.`);
  console.log(`Sign in as ${email} with the password ${password} and change it at once.`);
} finally {
  await disconnect();
}
