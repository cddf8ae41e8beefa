import type { Actor } from '@/lib/access/actor';
import { addDays } from '@/lib/growing/calendar-date';
import { addSite } from '@/lib/records/site/add-site.command';
import { addSiteInput } from '@/lib/records/site/site.input';
import { planStory } from './plan/plan-story';
import {
  demoPassword,
  memberEmail,
  storyCoordinator,
  storyFunder,
  storyMembers,
  storySecondCoordinator,
} from './story/people';
import { storySites } from './story/sites';
import { truths } from './story/truths';
import { addLots } from './write/add-lots';
import { agreeOnSharing } from './write/agree-sharing';
import { answerSignals } from './write/answer-signals';
import { bringPeople } from './write/bring-people';
import { bringTable } from './write/bring-table';
import { chooseMethods } from './write/choose-methods';
import { inOneGo } from './write/in-one-go';
import { invite } from './write/invite';
import { makeNetwork, storyZone } from './write/make-network';
import { publishYear } from './write/publish-year';
import { recordCosts } from './write/record-costs';
import { recordPresent } from './write/record-present';
import { recordProgramme } from './write/record-programme';
import { recordSite } from './write/record-story';
import { recordTrials } from './write/record-trials';
import { sendNotices } from './write/send-notices';

export type SignIn = {
  readonly role: string;
  readonly email: string;
  readonly password: string;
  readonly name: string;
};

/** Records the Larkmoor Growers' Network as it stands on `today`, and answers one sign-in per role. */
export async function seedLarkmoor(today: string): Promise<SignIn[]> {
  const coordinator = await makeNetwork({
    name: "Larkmoor Growers' Network",
    code: 'larkmoor',
    coordinator: storyCoordinator,
    password: demoPassword,
  });
  const siteIds = await inOneGo(coordinator, async (take) => {
    const ids = new Map<string, string>();
    for (const site of storySites) {
      const { id } = await take(addSiteInput, addSite, {
        code: site.code,
        name: site.name,
        kind: site.kind,
        timeZone: storyZone,
        trimDefault: site.trims ? 'trimmed' : 'as_picked',
        openedOn: addDays(today, -truths.seasons * 365 - 60),
      });
      ids.set(site.code, id);
    }
    return ids;
  });
  const idsOf = (codes: readonly string[]) => codes.flatMap((code) => siteIds.get(code) ?? []);
  const newcomer = { password: demoPassword, language: 'en', massUnit: 'kg' } as const;
  const members: Actor[] = [];
  for (const member of storyMembers) {
    const { name, language, massUnit, sites } = member;
    members.push(
      await invite(coordinator, {
        name,
        email: memberEmail(name),
        password: demoPassword,
        role: 'member',
        siteIds: idsOf(sites),
        language,
        massUnit,
      }),
    );
  }
  const second = { ...newcomer, ...storySecondCoordinator, language: 'es' } as const;
  await invite(coordinator, { ...second, role: 'coordinator', siteIds: [] });
  await invite(coordinator, { ...newcomer, ...storyFunder, role: 'funder', siteIds: [] });

  const plan = planStory(today);
  const book = await addLots(
    coordinator,
    plan.lots,
    addDays(today, -truths.seasons * 365),
    truths.seasons * 365,
  );
  const work = storyMembers.flatMap((member, index) =>
    member.sites.map((code) => ({ code, actor: members[index] })),
  );
  await Promise.all(
    [0, 1, 2].map(async (lane) => {
      for (const { code, actor } of work.filter((_, index) => index % 3 === lane)) {
        const siteId = siteIds.get(code);
        if (!actor || !siteId) throw new Error(`nobody works at ${code}`);
        const count = await recordSite(actor, plan, book, code, siteId);
        await recordPresent(actor, code, siteId, today, new Date());
        console.log(`  ${code}: ${count} batches`);
      }
    }),
  );
  await recordProgramme(coordinator, siteIds, today);
  await recordCosts(coordinator, today);
  await bringTable(coordinator, today);
  await bringPeople(coordinator);
  await chooseMethods(coordinator, siteIds);
  await agreeOnSharing((id) => members.find(({ siteIds: own }) => own.includes(id)), siteIds);
  await publishYear(coordinator, today);
  const tarn = siteIds.get(truths.shortBath.site);
  if (tarn !== undefined) await answerSignals(coordinator, tarn, today);
  await sendNotices(coordinator, members);
  await recordTrials(coordinator, today);
  const [firstMember] = storyMembers;
  const signIn = (role: string, { name, email }: { name: string; email: string }) => ({
    role,
    name,
    email,
    password: demoPassword,
  });
  return [
    signIn('coordinator', storyCoordinator),
    ...(firstMember
      ? [signIn('member', { name: firstMember.name, email: memberEmail(firstMember.name) })]
      : []),
    signIn('funder', storyFunder),
  ];
}
