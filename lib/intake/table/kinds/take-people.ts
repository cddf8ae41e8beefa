import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { invitePersonInput } from '@/lib/records/person/invite-person.input';
import { commandTaker } from '../command-taker';
import type { KeyedRecord } from '../known-keys';
import type { RowValues } from '../read-row';
import type { Taker, TakeSettings } from '../taker';
import { inviteFromRow } from './invite-from-row';

/** What the form of an invitation would have posted. A list of people that says no role is one of members. */
function rawPerson(values: RowValues, siteId: string | null): unknown {
  const parts = [values.get('firstName'), values.get('lastName')].filter((part) => part !== undefined);
  return {
    forName: values.get('name') ?? parts.join(' '),
    forEmail: values.get('email'),
    role: values.get('role') ?? 'member',
    siteIds: values.get('sites') ?? (siteId === null ? [] : [siteId]),
  };
}

/** Who is here, by the membership, and who is invited, each by the address. */
async function readKeys({ db, actor }: WriteContext): Promise<KeyedRecord[]> {
  return await db.$queryRaw<KeyedRecord[]>`
    select lower(c.email) as key, m.id::text as id
    from public.membership m join public.person_contact c on c.person_id = m.person_id
    where m.network_id = ${actor.networkId}::uuid and m.ended_at is null and m.voided_at is null
    union all
    select distinct i.for_email, m.id::text
    from public.invitation i
    join public.membership m on m.network_id = i.network_id and m.person_id = i.accepted_by_id
    join public.person_contact c on c.person_id = m.person_id
    where i.network_id = ${actor.networkId}::uuid and i.for_email <> lower(c.email) and i.voided_at is null
      and m.ended_at is null and m.voided_at is null
    union all
    select i.for_email, i.id::text from public.invitation i
    where i.network_id = ${actor.networkId}::uuid and i.for_email is not null and i.accepted_at is null and i.voided_at is null`;
}

/** Somebody is the same by their address. */
export function takePeople(settings: TakeSettings): Taker {
  return commandTaker(
    {
      schema: invitePersonInput,
      command: inviteFromRow,
      raw: (values, { siteId }) => rawPerson(values, siteId),
      scopeOf: () => 'network',
      keyOf: ({ forEmail }) => forEmail ?? '',
      readKeys,
    },
    settings,
  );
}
