import type { Actor } from '@/lib/access/actor';
import { agreeSharing } from '@/lib/records/sharing/agree-sharing.command';
import { agreeSharingInput } from '@/lib/records/sharing/agree-sharing.input';
import { inOneGo } from './in-one-go';

/** Some sites are proud of their name, one would rather not be known; the others keep what is usual. */
const said = [
  { of: 'MILL', withMembers: 'named', withFunder: 'named' },
  { of: 'TARN', withMembers: 'named', withFunder: 'named' },
  { of: 'KESTR', withMembers: 'anonymous', withFunder: 'not_at_all' },
] as const;

/** Has members say what their sites share; `memberOf` finds one of a site. */
export async function agreeOnSharing(
  memberOf: (siteId: string) => Actor | undefined,
  siteIds: ReadonlyMap<string, string>,
): Promise<void> {
  for (const { of, withMembers, withFunder } of said) {
    const id = siteIds.get(of);
    const member = id === undefined ? undefined : memberOf(id);
    if (member === undefined) continue;
    await inOneGo(member, async (take) => {
      await take(agreeSharingInput, agreeSharing, { id, revision: 0, withMembers, withFunder });
    });
  }
}
