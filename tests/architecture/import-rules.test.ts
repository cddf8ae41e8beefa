import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { cruise, type ICruiseOptions, type IForbiddenRuleType } from 'dependency-cruiser';
import { beforeAll, describe, expect, it } from 'vitest';
import { temporaryFolder } from '../support/temporary-folder';

const root = path.resolve(import.meta.dirname, '../..');
const { forbidden, options }: { forbidden: IForbiddenRuleType[]; options: ICruiseOptions } = createRequire(
  import.meta.url,
)('../../.dependency-cruiser.cjs');

const file = /[.](ts|tsx)$/;

/** One import that must be refused: by which rule, where it stands, and what it brings in. */
const refused: [rule: string, from: string, to: string, statement?: string][] = [
  ['base-imports-only-what-it-may', 'lib/base/clock.ts', 'lib/growing/moisture.ts'],
  ['stats-imports-only-what-it-may', 'lib/stats/rate.ts', 'lib/growing/moisture.ts'],
  ['growing-imports-only-what-it-may', 'lib/growing/straw.ts', 'lib/stats/mean.ts'],
  ['labels-imports-only-what-it-may', 'lib/labels/sheet.ts', 'lib/access/actor.ts'],
  ['drawing-of-pages-only-where-they-are-made', 'lib/records/page.ts', 'pdfkit'],
  ['database-imports-only-what-it-may', 'lib/database/pool.ts', 'lib/access/actor.ts'],
  ['access-imports-only-what-it-may', 'lib/access/roles.ts', 'lib/records/site.queries.ts'],
  ['records-imports-only-what-it-may', 'lib/records/batch.queries.ts', 'lib/analysis/by-site.ts'],
  ['analysis-imports-only-what-it-may', 'lib/analysis/by-method.ts', 'lib/records/site.queries.ts'],
  ['report-imports-only-what-it-may', 'lib/report/funder.ts', 'lib/stats/mean.ts'],
  ['intake-imports-only-what-it-may', 'lib/intake/parse.ts', 'lib/analysis/by-site.ts'],
  ['export-imports-only-what-it-may', 'lib/export/rows.ts', 'lib/analysis/by-site.ts'],
  ['api-imports-only-what-it-may', 'lib/api/door.ts', 'lib/ui/form/problem-text.ts'],
  ['digest-imports-only-what-it-may', 'lib/digest/letter.ts', 'lib/records/site.queries.ts'],
  ['offline-imports-only-what-it-may', 'lib/offline/queue.ts', 'lib/records/site.queries.ts'],
  ['ui-imports-only-what-it-may', 'lib/ui/figure.tsx', 'lib/digest/letter.ts'],
  ['ui-imports-only-types-from-there', 'lib/ui/chart.tsx', 'lib/analysis/by-site.ts'],
  ['app-imports-only-what-it-may', 'app/page.tsx', 'lib/stats/mean.ts'],
  ['app-imports-only-types-from-there', 'app/words.tsx', 'lib/database/generated/enums.ts'],
  ['launch-imports-only-what-it-may', 'lib/launch/serve.ts', 'lib/access/actor.ts'],
  ['seed-imports-only-what-it-may', 'seed/story.ts', 'lib/analysis/by-site.ts'],
  ['seed-imports-only-types-from-there', 'seed/words.ts', 'lib/database/generated/enums.ts'],
  ['no-cycle', 'lib/access/one.ts', 'lib/access/two.ts'],
  ['pure-modules-touch-nothing', 'lib/stats/file.ts', 'node:fs'],
  ['generated-client-only-as-types', 'lib/records/leak.ts', 'lib/database/generated/client.ts'],
  ['drivers-only-in-database', 'lib/records/raw.ts', 'pg'],
  ['passwords-only-in-access', 'lib/records/hash.ts', '@node-rs/argon2'],
  ['sign-in-only-in-access', 'lib/records/session.ts', 'next-auth'],
  ['letters-only-in-digest', 'lib/report/letter.ts', 'nodemailer'],
  ['recharts-only-in-ui', 'lib/report/chart.ts', 'recharts'],
  ['links-of-our-own-only', 'app/door.tsx', 'next/link'],
  ['no-development-package-at-run-time', 'lib/base/check.ts', 'fast-check'],
  ['nothing-unresolved', 'lib/base/lost.ts', './nowhere'],
  ['no-import-from-tests', 'lib/base/borrowed.ts', 'tests/support/fake.ts'],
];

/** Imports that must pass, some of them only because they bring in types. */
const allowed: [from: string, to: string, statement?: string][] = [
  ['lib/access/two.ts', 'lib/access/one.ts'],
  ['lib/analysis/by-site.ts', 'lib/stats/mean.ts'],
  ['lib/database/open.ts', 'pg'],
  ['lib/access/scoped-db.ts', 'lib/database/generated/client.ts'],
  ['lib/records/typed.ts', 'lib/database/generated/client.ts', 'import type'],
  ['lib/ui/shown.tsx', 'lib/analysis/by-site.ts', 'import type'],
  ['lib/ui/form.tsx', 'lib/records/batch.input.ts'],
  ['lib/ui/preference.tsx', 'lib/access/preferences.input.ts'],
  ['lib/ui/refused.tsx', 'lib/base/result.ts'],
  ['app/list.tsx', 'lib/records/site.queries.ts'],
  ['tests/borrow.ts', 'lib/stats/mean.ts'],
];

const place = temporaryFolder('imports');
const write = (name: string, text: string) => {
  mkdirSync(path.dirname(path.join(place, name)), { recursive: true });
  writeFileSync(path.join(place, name), text);
};

const importLine = (from: string, to: string, statement = 'import') => {
  const target = file.test(to) ? `./${path.relative(path.dirname(from), to)}`.replace(file, '') : to;
  return `${statement} { x } from '${target}';\nexport const y: typeof x = x;\n`;
};

type Violation = { rule: string; from: string; to: string };
let violations: Violation[];

beforeAll(async () => {
  symlinkSync(path.join(root, 'node_modules'), path.join(place, 'node_modules'));
  symlinkSync(path.join(root, 'package.json'), path.join(place, 'package.json'));
  const imports = [...refused.map(([, ...rest]) => rest), ...allowed];
  for (const [, to] of imports) if (file.test(to)) write(to, 'export const x = 1;\n');
  for (const [from, to, statement] of imports) write(from, importLine(from, to, statement));
  const { tsConfig: _, ...cruiseOptions } = options;
  const { output } = await cruise(['app', 'lib', 'seed', 'tests'], {
    ...cruiseOptions,
    baseDir: place,
    validate: true,
    ruleSet: { forbidden },
  });
  if (typeof output === 'string') throw new Error(output);
  violations = output.summary.violations.map(({ rule, from, to }) => ({ rule: rule.name, from, to }));
}, 60_000);

describe('the import rules', () => {
  it('have an example of something refused for every rule', () => {
    expect(new Set(refused.map(([rule]) => rule))).toEqual(new Set(forbidden.map(({ name }) => name)));
  });

  it.each(refused)('%s: refuses %s → %s', (rule, from, to) => {
    const target = file.test(to) ? to : path.basename(to).replace('node:', '');
    expect(violations).toContainEqual({ rule, from, to: expect.stringContaining(target) });
  });

  it.each(allowed)('let %s import %s', (from) => {
    // The cycle's second half is refused with its first; every other rule must be silent here.
    expect(violations.filter((found) => found.from === from && found.rule !== 'no-cycle')).toEqual([]);
  });
});
