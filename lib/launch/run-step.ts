import { type ChildProcess, spawn } from 'node:child_process';
import { root } from './project';
import { beforeExit, StepFailed } from './shut-down';

type Environment = Record<string, string | undefined>;

/** Waits for the end of `child` and returns its exit code; 1 where a signal ended it. */
export const exitCode = (child: ChildProcess) =>
  new Promise<number>((resolve, reject) => {
    if (child.exitCode !== null || child.signalCode !== null) return resolve(child.exitCode ?? 1);
    child.once('error', reject);
    child.once('exit', (code) => resolve(code ?? 1));
  });

/** Runs a program of node_modules/.bin or of the path, with its output shown, and returns its exit code. */
export async function runProgram(
  program: string,
  args: string[],
  environment: Environment = {},
): Promise<number> {
  const child = spawn(program, args, {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, NEXT_TELEMETRY_DISABLED: '1', CHECKPOINT_DISABLE: '1', ...environment },
  });
  beforeExit(() => void child.kill());
  return exitCode(child);
}

/** The same; a code other than 0 ends the command, the program having said why. */
export async function runStep(program: string, args: string[], environment?: Environment): Promise<void> {
  const code = await runProgram(program, args, environment);
  if (code !== 0) throw new StepFailed(`${program} ended with code ${code}`);
}

/** A program that a package brought along. */
export const bin = (name: string) => `${root}/node_modules/.bin/${name}`;

/**
 * Runs a script of this project. The condition makes "server-only" modules load: they refuse to outside a
 * server, and a script of ours is on the server's side.
 */
export const runScript = (file: string, environment?: Environment) =>
  runStep(process.execPath, ['--conditions=react-server', '--import', 'tsx', file], environment);
