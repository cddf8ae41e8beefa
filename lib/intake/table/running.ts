/** A job that gave no sign for this long is taken to have ended with its process. */
export const silentMilliseconds = 60_000;

/** Whether a file is being worked on at this moment. */
export function isRunning(
  file: { readonly state: string; readonly heartbeatAt: Date | null },
  now: Date,
): boolean {
  const working = file.state === 'checking' || file.state === 'adding';
  return (
    working && file.heartbeatAt !== null && now.getTime() - file.heartbeatAt.getTime() < silentMilliseconds
  );
}

/** Stands as the trouble of a job that has not begun because another table is being worked on. */
export const waitsForTurn = 'waits';

/** Stands as the trouble of a table whose work did not begin because too many of its network wait already. */
export const queueIsFull = 'full';

/** `waiting`: work that begins once another table is done; `stopped`: work that began and gives no sign any more. */
export type IntakeState = 'uploaded' | 'waiting' | 'checking' | 'checked' | 'adding' | 'added' | 'stopped';

/** What a file is now, by what was kept of it and the time since. */
export function stateNow(
  row: { readonly state: string; readonly heartbeatAt: Date | null; readonly trouble: string | null },
  now: Date,
): IntakeState {
  if (row.state === 'checking' || row.state === 'adding') {
    if (!isRunning(row, now)) return 'stopped';
    return row.trouble === waitsForTurn ? 'waiting' : row.state;
  }
  return row.state === 'checked' || row.state === 'added' ? row.state : 'uploaded';
}
