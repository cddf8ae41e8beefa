/**
 * Who may import whom. One row per module: the modules it may import as they are, and those of which it may
 * import types only (`types`). What stands in no row is forbidden. DEVELOPERS.md shows the same table.
 */
const browserSafe =
  '^lib/base/(errors|result|form-data|new-id|reader-locale|most-sites-listed|paragraphs-of|given-once)[.]';
/** The fixed words of the database: languages, container kinds and the like. */
const words = '^lib/database/generated/enums[.]ts$';
const inputs = '^lib/(records|access|analysis|report)/.*[.]input[.]ts$';

/** @type {Record<string, { from: string, may: string[], types?: string[] }>} */
const modules = {
  base: { from: '^lib/base/', may: ['^lib/base/'] },
  stats: { from: '^lib/stats/', may: ['^lib/stats/'] },
  growing: { from: '^lib/growing/', may: ['^lib/growing/'] },
  labels: { from: '^lib/labels/', may: ['^lib/base/', '^lib/labels/'] },
  database: { from: '^lib/database/', may: ['^lib/base/', '^lib/database/'] },
  access: { from: '^lib/access/', may: ['^lib/base/', '^lib/database/', '^lib/access/'] },
  records: {
    from: '^lib/records/',
    may: [
      '^lib/base/',
      '^lib/database/',
      '^lib/growing/',
      '^lib/labels/sheet/',
      '^lib/access/',
      '^lib/records/',
    ],
  },
  analysis: {
    from: '^lib/analysis/',
    may: ['^lib/base/', '^lib/database/', '^lib/stats/', '^lib/growing/', '^lib/access/', '^lib/analysis/'],
  },
  report: {
    from: '^lib/report/',
    // Of the records, the fields of a form alone: an id or a date is read and refused in one way everywhere. Of labels, the letters.
    may: [
      '^lib/base/',
      '^lib/database/',
      '^lib/growing/',
      '^lib/access/',
      '^lib/analysis/',
      '^lib/records/fields/',
      '^lib/labels/print/(typeface|collect-pages)[.]',
      '^lib/report/',
    ],
  },
  intake: {
    from: '^lib/intake/',
    may: ['^lib/base/', '^lib/database/', '^lib/growing/', '^lib/access/', '^lib/records/', '^lib/intake/'],
  },
  export: {
    from: '^lib/export/',
    may: ['^lib/base/', '^lib/database/', '^lib/growing/', '^lib/access/', '^lib/records/', '^lib/export/'],
  },
  api: {
    from: '^lib/api/',
    may: ['^lib/(base|database|growing|access|records|analysis|intake|api)/'],
  },
  digest: {
    from: '^lib/digest/',
    may: ['^lib/(base|growing|access|analysis|digest)/', '^lib/ui/(format|i18n|watch)/'],
  },
  offline: { from: '^lib/offline/', may: [browserSafe, inputs, '^lib/growing/', '^lib/offline/'] },
  ui: {
    from: '^lib/ui/',
    may: [browserSafe, inputs, '^lib/growing/', '^lib/labels/sheet/', '^lib/offline/', '^lib/ui/'],
    types: [
      '^lib/stats/',
      '^lib/labels/',
      '^lib/access/',
      '^lib/records/',
      '^lib/analysis/',
      '^lib/report/',
      '^lib/export/',
      '^lib/intake/',
      '^lib/api/',
      words,
    ],
  },
  app: {
    from: '^(app/|proxy[.]ts$)',
    may: ['^lib/(base|growing|labels|access|records|analysis|report|export|intake|api|offline|ui)/', '^app/'],
    types: [words],
  },
  launch: {
    from: '^lib/launch/',
    may: ['^lib/base/', '^lib/database/', '^lib/access/token[.]', '^lib/launch/'],
  },
  seed: {
    from: '^seed/',
    may: [
      '^lib/base/',
      '^lib/database/(client|startup-check)[.]',
      '^lib/stats/random/',
      '^lib/growing/',
      '^lib/access/',
      '^lib/records/',
      // The story's coordinator publishes a report, by the same command as any other.
      '^lib/report/.*[.](command|input)[.]ts$',
      // A table of hers is brought in as any other.
      '^lib/intake/table/(keep-file|start-job)[.]ts$',
      '^seed/',
    ],
    types: [words],
  },
};

/** Files outside a rule, each with its reason. */
const exceptions = {
  // The reader's language, for next-intl, and units; both run on the server only.
  ui: 'lib/ui/i18n/(request|reader-units)[.]ts$',
};

const ours = '^(app|lib|seed|tests|prisma)/';

const moduleRules = Object.entries(modules).flatMap(([name, { from, may, types = [] }]) => {
  const source = exceptions[name] ? { path: from, pathNot: exceptions[name] } : { path: from };
  const rules = [
    {
      name: `${name}-imports-only-what-it-may`,
      severity: 'error',
      from: source,
      to: { path: ours, pathNot: [...may, ...types] },
    },
  ];
  if (types.length > 0)
    rules.push({
      name: `${name}-imports-only-types-from-there`,
      severity: 'error',
      from: source,
      to: { path: types, pathNot: may, dependencyTypesNot: ['type-only'] },
    });
  return rules;
});

/** Packages that belong to one part of the house. */
const onlyIn = (name, packages, from) => ({
  name,
  severity: 'error',
  from: { path: '^(app|lib|seed|proxy[.]ts)', pathNot: from },
  to: { path: `(^|/)node_modules/(${packages})/` },
});

module.exports = {
  forbidden: [
    ...moduleRules,
    {
      name: 'no-cycle',
      severity: 'error',
      comment: 'A type may refer back; code that runs may not.',
      from: { pathNot: '^lib/database/generated/' },
      to: {
        circular: true,
        viaOnly: { dependencyTypesNot: ['type-only'], pathNot: '^lib/database/generated/' },
      },
    },
    {
      name: 'pure-modules-touch-nothing',
      severity: 'error',
      comment: 'Calculations load in a browser and depend on their arguments alone.',
      from: { path: '^lib/(stats|growing|labels/sheet)/' },
      to: { dependencyTypes: ['core', 'npm', 'npm-dev', 'npm-optional', 'npm-peer', 'npm-no-pkg'] },
    },
    {
      name: 'generated-client-only-as-types',
      severity: 'error',
      comment: 'Whoever holds the client as a value can ask the database without an actor.',
      from: {
        path: '^(app|lib|seed|proxy[.]ts)',
        pathNot:
          '^lib/(database/(generated/|client[.]ts$|database-error[.]ts$|sql-text[.]ts$)|access/scoped-db[.]ts$)',
      },
      to: { path: '^lib/database/generated/', dependencyTypesNot: ['type-only'] },
    },
    onlyIn('drivers-only-in-database', 'pg|@prisma/[^/]+|prisma', '^lib/database/'),
    onlyIn('passwords-only-in-access', '@node-rs/argon2', '^lib/access/'),
    onlyIn('sign-in-only-in-access', 'next-auth', '^(lib/access/|app/api/auth/)'),
    onlyIn('drawing-of-pages-only-where-they-are-made', 'pdfkit|uqr', '^lib/(labels/print|report)/'),
    onlyIn('letters-only-in-digest', 'nodemailer', '^lib/digest/'),
    onlyIn('recharts-only-in-ui', 'recharts', '^lib/ui/'),
    {
      name: 'links-of-our-own-only',
      severity: 'error',
      comment: 'The link of the framework fetches every page it is seen to lead to.',
      from: { path: '^(app|lib)/', pathNot: '^lib/ui/page/link[.]tsx$' },
      to: { path: '(^|/)node_modules/next/link[.]' },
    },
    {
      name: 'no-development-package-at-run-time',
      severity: 'error',
      from: { path: '^(app|lib|proxy[.]ts)', pathNot: '^lib/(launch|database/migrate)/' },
      to: { dependencyTypes: ['npm-dev'], dependencyTypesNot: ['type-only'] },
    },
    { name: 'nothing-unresolved', severity: 'error', from: {}, to: { couldNotResolve: true } },
    {
      name: 'no-import-from-tests',
      severity: 'error',
      from: { pathNot: '^tests/' },
      to: { path: '^tests/' },
    },
  ],
  options: {
    doNotFollow: { path: '(^|/)node_modules/|^lib/database/generated/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    combinedDependencies: true,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'require', 'node', 'default', 'types'],
    },
    exclude: { path: '^tests/architecture/fixtures/' },
  },
};
