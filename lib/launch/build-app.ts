import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { inProject } from './project';
import { bin, runStep } from './run-step';
import { hashOf } from './source-hash';

const standalone = inProject('.next/standalone');

/** Does `work` unless it was done for this very `hash`, which is kept in `file` once the work has succeeded. */
async function unlessDone(file: string, hash: string, work: () => Promise<void>) {
  if (existsSync(file) && readFileSync(file, 'utf8') === hash) return;
  rmSync(file, { force: true });
  await work();
  writeFileSync(file, hash);
}

/** Generates the database client when the schema has changed since. */
export async function generateClient(): Promise<void> {
  mkdirSync(inProject('.pinset'), { recursive: true });
  const folder = inProject('lib/database/generated');
  mkdirSync(folder, { recursive: true });
  const hash = hashOf('prisma/schema.prisma', 'package-lock.json');
  await unlessDone(`${folder}/.schema-hash`, hash, () => runStep(bin('prisma'), ['generate']));
}

async function build() {
  console.log('Building the application …');
  await runStep(bin('next'), ['build']);
  // What a browser fetches is not part of the standalone tree until it is put there.
  cpSync(inProject('.next/static'), `${standalone}/.next/static`, { recursive: true });
  if (existsSync(inProject('public')))
    cpSync(inProject('public'), `${standalone}/public`, { recursive: true });
  // A thread starts from a file of its own, which the build of the pages does not make.
  await runStep(bin('esbuild'), [
    inProject('lib/analysis/fitting/fit-worker.ts'),
    '--bundle',
    '--platform=node',
    '--format=esm',
    '--log-level=warning',
    `--outfile=${standalone}/fit-worker.mjs`,
  ]);
  // The build copies .env along; settings and secrets come from the environment of the start instead.
  for (const name of readdirSync(standalone)) if (name.startsWith('.env')) rmSync(`${standalone}/${name}`);
}

/** Builds the application when something it is made of has changed since the last build. */
export async function buildApp(): Promise<void> {
  await generateClient();
  const sources = [
    'app',
    'lib',
    'messages',
    'public',
    'prisma/schema.prisma',
    'package-lock.json',
    'tsconfig.json',
  ];
  const settings = ['next.config.ts', 'postcss.config.mjs', 'proxy.ts', 'instrumentation.ts'];
  await unlessDone(inProject('.next/source-hash'), hashOf(...sources, ...settings), build);
}
