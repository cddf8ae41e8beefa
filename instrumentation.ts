/** Called once by each server process before it answers; what the server does by itself begins here. */
export async function register(): Promise<void> {
  if (process.env.NEXT_RUNTIME !== 'nodejs' || !process.env.SMTP_URL) return;
  const { scheduleDigests } = await import('./lib/digest/schedule-digests');
  scheduleDigests();
}
