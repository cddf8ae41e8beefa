import 'server-only';
import type { MailSetting } from '@/lib/base/mail-setting';
import { digestsDue } from './digests-due';
import { sendDigest } from './send-digest';

const told = (what: string, problem: unknown) =>
  console.error(
    JSON.stringify({
      level: 'warn',
      what,
      why: problem instanceof Error ? problem.message : String(problem),
    }),
  );

/** Sends what is due, one after another; what cannot be sent is told in one line and stays due. */
export async function sendDueDigests(mail: MailSetting, url: string, now: Date): Promise<number> {
  let sent = 0;
  for (const due of await digestsDue(now)) {
    try {
      if (await sendDigest(due, mail, url, now)) sent += 1;
    } catch (problem) {
      told('a weekly digest was not sent', problem);
    }
  }
  return sent;
}
