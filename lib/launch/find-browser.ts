import { spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { inProject } from './project';

const works = (program: string) =>
  spawnSync(program, ['--version'], { encoding: 'utf8', timeout: 20_000 }).stdout?.includes('Chrom') ?? false;

/** The full path of the first of `names` on the PATH that is a browser and starts. */
const onPath = (...names: string[]): string | undefined => {
  for (const name of names) {
    const found = spawnSync('/bin/sh', ['-c', `command -v ${name}`], { encoding: 'utf8' }).stdout?.trim();
    if (found && works(found)) return found;
  }
  return undefined;
};

/** Debian's package, where root may install it. */
function fromApt(): string | undefined {
  if (process.getuid?.() !== 0 || spawnSync('apt-get', ['--version']).status !== 0) return undefined;
  console.log('Installing Chromium for the browser tests …');
  spawnSync('apt-get', ['update', '-qq'], { stdio: 'ignore' });
  spawnSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], { stdio: 'ignore' });
  return onPath('chromium');
}

/** The package's list of fonts names a fixed folder; this one names where they were unpacked, and the system's. */
const fontList = (folder: string) => `<?xml version="1.0"?>
<fontconfig>
  <dir>${folder}/fonts</dir>
  <dir>/usr/share/fonts</dir>
  <cachedir>${folder}/cache</cachedir>
</fontconfig>
`;

/** The browser in node_modules, unpacked into the project; it brings the system libraries it needs. */
async function fromPackage(): Promise<string | undefined> {
  if (process.platform !== 'linux' || process.arch !== 'x64') return undefined;
  // The package looks for this name to decide whether to unpack its own libraries too.
  process.env.AWS_EXECUTION_ENV ??= 'AWS_Lambda_nodejs22.x';
  const system = process.env.TMPDIR;
  const folder = inProject('.pinset/browser');
  process.env.TMPDIR = folder;
  mkdirSync(folder, { recursive: true });
  try {
    const { default: chromium } = await import('@sparticuz/chromium');
    const program = await chromium.executablePath();
    const fonts = path.join(folder, 'fonts');
    writeFileSync(path.join(fonts, 'fonts.conf'), fontList(fonts));
    return works(program) ? program : undefined;
  } finally {
    if (system === undefined) delete process.env.TMPDIR;
    else process.env.TMPDIR = system;
  }
}

/** Playwright's own browser, where its download server is in reach. */
async function fromPlaywright(): Promise<string | undefined> {
  const { status } = spawnSync(inProject('node_modules/.bin/playwright'), ['install', 'chromium'], {
    stdio: 'inherit',
  });
  if (status !== 0) return undefined;
  const { chromium } = await import('@playwright/test');
  return chromium.executablePath();
}

/**
 * The program of a Chromium for the browser tests: one on the PATH, else Debian's, else the one in
 * node_modules, else a download. CHROMIUM in the environment is asked before any of these.
 */
export async function findBrowser(): Promise<string> {
  const found =
    onPath('chromium', 'chromium-browser', 'google-chrome') ??
    fromApt() ??
    (await fromPackage()) ??
    (await fromPlaywright());
  if (found) return found;
  throw new Error('No Chromium could be found or installed: set CHROMIUM to the path of one.');
}
