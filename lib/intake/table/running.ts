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

/** `stopped`: work that began and gives no sign any more. */
export type IntakeState = 'uploaded' | 'checking' | 'checked' | 'adding' | 'added' | 'stopped';

/** What a file is now, by what was kept of it and the time since. */
export function stateNow(
  row: { readonly state: string; readonly heartbeatAt: Date | null },
  now: Date,
): IntakeState {
  if (row.state === 'checking' || row.state === 'adding') return isRunning(row, now) ? row.state : 'stopped';
  return row.state === 'checked' || row.state === 'added' ? row.state : 'uploaded';
}
