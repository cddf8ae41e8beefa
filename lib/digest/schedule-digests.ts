import 'server-only';
import { environment } from '@/lib/base/environment';
import { mailSetting } from '@/lib/base/mail-setting';
import { sendDueDigests } from './send-due-digests';

const everyMilliseconds = 15 * 60_000;
/** The server answers people first. */
const firstMilliseconds = 60_000;

/** From now on the server looks every quarter of an hour for digests that are due. Without a mail server it does nothing. */
export function scheduleDigests(): void {
  const mail = mailSetting(process.env);
  if (mail === undefined || mail === 'wrong') return;
  const look = async () => {
    try {
      await sendDueDigests(mail, new URL(environment().NEXTAUTH_URL).origin, new Date());
    } catch (problem) {
      const why = problem instanceof Error ? problem.message : String(problem);
      console.error(JSON.stringify({ level: 'warn', what: 'weekly digests were not looked for', why }));
    }
    // One after the other, however long the models take.
    setTimeout(look, everyMilliseconds).unref();
  };
  setTimeout(look, firstMilliseconds).unref();
}
