import { StartProblem } from '@/lib/database/start-problem';

const undo: (() => Promise<void> | void)[] = [];
let ending: Promise<never> | undefined;

/** Has `task` done before this process ends, whether it ends by itself, by a signal or by an error; last first. */
export const beforeExit = (task: () => Promise<void> | void) => undo.push(task);

async function end(code: number): Promise<never> {
  for (let task = undo.pop(); task; task = undo.pop()) {
    try {
      await task();
    } catch (problem) {
      console.error(problem);
    }
  }
  return process.exit(code);
}

/** Undoes what was begun and ends this process with `code`. Only the first call counts. */
export const shutDown = (code: number): Promise<never> => {
  ending ??= end(code);
  return ending;
};

/** Ended by a step that already said what is wrong. */
export class StepFailed extends Error {}

/**
 * Runs a command of this project to its end. What a person must put right is told in one line; the end of the
 * process by a signal is an ordinary one.
 *
 * @param command returns the exit code
 */
export async function run(command: () => Promise<number>): Promise<never> {
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => void shutDown(0));
  try {
    return await shutDown(await command());
  } catch (problem) {
    // Once it is ending, what breaks was broken by that.
    if (ending) return ending;
    if (problem instanceof StartProblem) console.error(problem.message);
    else if (!(problem instanceof StepFailed)) console.error(problem);
    return shutDown(1);
  }
}
