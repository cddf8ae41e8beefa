// Runs before anything is installed: Node's own modules only.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';

const root = path.resolve(import.meta.dirname, '../..');

/**
 * The packages a lock file names, by folder.
 * @typedef {Record<string, { version?: string, optional?: boolean, devOptional?: boolean, dev?: boolean }>} Packages
 * @param {string} file
 * @returns {Packages}
 */
const packagesIn = (file) => (existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')).packages : {});

/** Whether node_modules lacks something the lock file asks for. Packages for other platforms may be absent. */
function isIncomplete() {
  const installed = packagesIn(path.join(root, 'node_modules/.package-lock.json'));
  const wanted = Object.entries(packagesIn(path.join(root, 'package-lock.json'))).filter(
    ([folder]) => folder !== '',
  );
  return wanted.some(([folder, { version, optional, devOptional }]) => {
    const found = installed[folder];
    return found ? found.version !== version : !optional && !devOptional;
  });
}

/** Stops with one line on a Node that is too old, and installs the packages of the lock file where they are missing. */
export function ensureInstalled() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  if (major < 20 || (major === 20 && minor < 12)) {
    console.error(`Pinset needs Node 20.12 or later; this is ${process.versions.node}.`);
    process.exit(1);
  }
  if (!isIncomplete()) return;
  console.log('Installing the packages (once; a minute or so) …');
  // npm tells its scripts where it is; a command started without npm finds it on the PATH.
  const npm = process.env.npm_execpath;
  const args = ['ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error'];
  const { status } = npm?.endsWith('.js')
    ? spawnSync(process.execPath, [npm, ...args], { cwd: root, stdio: 'inherit' })
    : spawnSync('npm', args, { cwd: root, stdio: 'inherit', shell: process.platform === 'win32' });
  if (status !== 0) {
    console.error("The packages could not be installed: see npm's message above.");
    process.exit(1);
  }
}
