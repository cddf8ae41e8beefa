import type { Actor } from '@/lib/access/actor';
import { changePreferences } from '@/lib/access/change-preferences';
import { joinAsNew } from '@/lib/access/join';
import type { Language, MassUnit, MembershipRole } from '@/lib/database/generated/enums';
import { invitePerson } from '@/lib/records/person/invite-person.command';
import { invitePersonInput } from '@/lib/records/person/invite-person.input';
import { actorOf } from './actor-of';
import { inOneGo } from './in-one-go';

type Newcomer = {
  readonly name: string;
  readonly email: string;
  readonly password: string;
  readonly role: MembershipRole;
  readonly siteIds: readonly string[];
  readonly language: Language;
  readonly massUnit: MassUnit;
};

/** Invites somebody and joins as them, by the link. */
export async function invite(coordinator: Actor, newcomer: Newcomer): Promise<Actor> {
  const { role, siteIds, name, email, password, language, massUnit } = newcomer;
  const { token } = await inOneGo(coordinator, (take) =>
    take(invitePersonInput, invitePerson, { role, siteIds: [...siteIds], forName: name }),
  );
  const joined = await joinAsNew(token, { name, email, password });
  if (joined.kind !== 'ok') throw new Error(`${name} could not join: ${JSON.stringify(joined)}`);
  const actor = await actorOf(joined.value.personId);
  const us = massUnit === 'lb';
  await changePreferences(actor, {
    name,
    language,
    massUnit,
    region: language === 'es' ? 'es-US' : 'en-US',
    temperatureUnit: us ? 'fahrenheit' : 'celsius',
    volumeUnit: us ? 'gallon' : 'litre',
  });
  return actor;
}
